package monochord.cell.sandbox;

import java.util.regex.Pattern;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

/**
 * What is run next of a text, and what comes after it: as if it were typed line by line, so that a line which can stand
 * by itself does, with or without a semicolon. A line that can only follow on goes with the one before it: one that begins
 * with a point, or with {@code else}, {@code catch} or {@code finally}.
 *
 * @param isWhole whether it can be run
 */
record NextSnippet(String source, String rest, boolean isWhole) {
    private static final Pattern FOLLOWS = Pattern.compile("\\s*(?:\\.|(?:else|catch|finally)\\b)");

    static NextSnippet of(String text, SourceCodeAnalysis analysis) {
        for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', end + 1)) {
            if (FOLLOWS.matcher(text).region(end, text.length()).lookingAt()) {
                continue;
            }
            CompletionInfo info = analysis.analyzeCompletion(text.substring(0, end));
            if (info.completeness() == Completeness.COMPLETE
                    || info.completeness() == Completeness.COMPLETE_WITH_SEMI) {
                return new NextSnippet(info.source(), info.remaining() + text.substring(end), true);
            }
        }
        CompletionInfo info = analysis.analyzeCompletion(text);
        String source = info.source() == null ? text : info.source();
        return new NextSnippet(source, info.remaining(), info.completeness().isComplete());
    }
}
