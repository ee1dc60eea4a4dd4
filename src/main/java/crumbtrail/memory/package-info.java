/** Keeps what was worked out lately, for those above to ask again. */
package crumbtrail.memory;
