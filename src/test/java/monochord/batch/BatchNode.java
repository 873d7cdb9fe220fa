package monochord.batch;

import java.util.List;

/** A part of a batch file as it was read, with its percent signs already filled in. */
sealed interface BatchNode {
    /**
     * A redirection.
     *
     * @param handle 0 to 9
     * @param target a file, or {@code &} and another handle
     */
    record Redirect(int handle, boolean append, String target) {}

    /** A command and what it is given, as they stand. */
    record Command(String text, List<Redirect> redirects) implements BatchNode {}

    /** What stands in parentheses. */
    record Group(List<BatchNode> nodes, List<Redirect> redirects) implements BatchNode {}

    /** Two that are joined by {@code &}, {@code &&}, {@code ||} or {@code |}. */
    record Joined(BatchNode left, String by, BatchNode right) implements BatchNode {}

    /** @param otherwise is null where there is none */
    record If(boolean isNot, List<String> condition, BatchNode then, BatchNode otherwise) implements BatchNode {}

    /**
     * @param options of {@code /f}; null for a loop over names
     * @param set what stands in the parentheses
     */
    record For(String options, char variable, String set, BatchNode body) implements BatchNode {}
}
