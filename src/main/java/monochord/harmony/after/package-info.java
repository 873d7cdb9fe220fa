/**
 * Where a chord goes next in a key, each way with its reason and, where songs were counted, how often.
 *
 * <p>The reasons are rules and need no counts; a {@link monochord.harmony.after.SongCounts} is handed in as a value.
 *
 * <p>Imports {@code theory} and {@code harmony}; no input or output, no state.
 */
package monochord.harmony.after;
