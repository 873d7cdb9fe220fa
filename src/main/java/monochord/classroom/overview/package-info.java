/**
 * A class as its teacher sees it: what it can do in which key, which mistakes come again, what to teach next. {@link
 * monochord.classroom.overview.ClassTally} counts answers, {@link monochord.classroom.overview.ClassOverview} is what came of
 * it. Pupils are codes here; no name is known.
 *
 * <p>Imports {@code classroom} and what that may import.
 */
package monochord.classroom.overview;
