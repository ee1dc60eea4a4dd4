/** The bake log on its way in and out: JSON Lines with photos beside them, and tables. */
@NullMarked
package crumbtrail.bakelog.exchange;

import org.jspecify.annotations.NullMarked;
