/**
 * A rehearsal at the instrument as values: what was due, what was played, and where a teacher would lead next. The clock is
 * handed in; nothing sounds here.
 *
 * <p>Part of the course room; imports {@code harmony}, {@code text} and {@code theory}.
 */
package monochord.course.rehearsal;
