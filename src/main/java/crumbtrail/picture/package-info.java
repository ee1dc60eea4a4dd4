/**
 * Draws bread with its faults: a cut loaf, dough, a starter, from traits that range around those of
 * a sound bake. The same look gives the same picture, letter for letter.
 */
package crumbtrail.picture;
