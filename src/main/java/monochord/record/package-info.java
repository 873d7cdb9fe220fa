/**
 * Attempts on disk: one SQLite file, one row an attempt, never rewritten. An attempt is
 * the learner's own, or a pupil's, who has a code; it may belong to an assignment. What is known is read off the own ones.
 *
 * <p>{@link monochord.record.Register} is what a sitting talks to. It opens the file when it is first needed, carries on
 * where nothing can be kept, and says so once. An answer is on disk before it is judged aloud, so a sitting may be killed
 * at any moment; several shells may write at once.
 *
 * <p>Imports {@code practice}, {@code text} and {@code file}, and SQLite by {@code java.sql}.
 */
package monochord.record;
