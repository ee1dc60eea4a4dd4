/**
 * Bakes that are kept: what was written, what came out, which causes were confirmed. The records
 * and the log as others see it; how it is stored is the business of the package {@code store}
 * below.
 */
@NullMarked
package crumbtrail.bakelog;

import org.jspecify.annotations.NullMarked;
