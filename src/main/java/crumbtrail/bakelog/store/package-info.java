/**
 * The bake log in a database: an H2 file, or a PostgreSQL server. No other package knows that there
 * are databases.
 */
@NullMarked
package crumbtrail.bakelog.store;

import org.jspecify.annotations.NullMarked;
