/** Tins, trays and rings: how much they hold, how much dough fits, how high the loaf will stand. */
package crumbtrail.vessel;
