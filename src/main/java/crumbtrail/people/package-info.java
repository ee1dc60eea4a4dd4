/** Who keeps bakes on a server that several people share: accounts, log-ins, classes. */
@NullMarked
package crumbtrail.people;

import org.jspecify.annotations.NullMarked;
