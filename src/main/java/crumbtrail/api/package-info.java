/**
 * What programs get: the shape of every answer, and the description of every address. Knows nothing
 * of how it is served.
 */
package crumbtrail.api;
