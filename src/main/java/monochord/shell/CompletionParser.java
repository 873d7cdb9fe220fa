package monochord.shell;

import java.util.ArrayList;
import java.util.List;
import org.jline.reader.CompletingParsedLine;
import org.jline.reader.ParsedLine;
import org.jline.reader.Parser;

/** Cuts a line at its spaces for completion; quotes, backslashes and exclamation marks mean nothing special. */
final class CompletionParser implements Parser {
    private record Cut(String line, int cursor, List<String> words, int wordIndex, int wordCursor)
            implements CompletingParsedLine {
        @Override
        public String word() {
            return words.get(wordIndex);
        }

        @Override
        public CharSequence escape(CharSequence candidate, boolean complete) {
            return candidate;
        }

        @Override
        public int rawWordCursor() {
            return wordCursor;
        }

        @Override
        public int rawWordLength() {
            return word().length();
        }
    }

    @Override
    public ParsedLine parse(String line, int cursor, ParseContext context) {
        List<String> words = new ArrayList<>(List.of(line.substring(0, cursor).split(" +", -1)));
        int last = words.size() - 1;
        int wordCursor = words.get(last).length();
        int end = line.indexOf(' ', cursor);
        words.set(last, words.get(last) + line.substring(cursor, end < 0 ? line.length() : end));
        return new Cut(line, cursor, words, last, wordCursor);
    }
}
