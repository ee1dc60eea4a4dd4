/** What many bakes of one kitchen tell: charts of their readings, and which causes come back. */
package crumbtrail.trends;
