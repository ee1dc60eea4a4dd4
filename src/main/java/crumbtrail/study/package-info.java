/**
 * What a bake log teaches: two of its bakes side by side, what a kitchen's readings and confirmed
 * causes come to, what was learnt of its odds, and how well its causes were foretold. Reads a log
 * and never writes one.
 */
@NullMarked
package crumbtrail.study;

import org.jspecify.annotations.NullMarked;
