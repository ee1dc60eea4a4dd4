/** How often the ranking is right: labelled bakes, published tables, calibration, the page. */
package crumbtrail.accuracy;
