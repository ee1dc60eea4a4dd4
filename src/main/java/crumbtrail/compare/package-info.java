/**
 * Two bakes side by side: what was done otherwise, and how much of the difference in outcome each
 * of these differences can explain by the rules.
 */
package crumbtrail.compare;
