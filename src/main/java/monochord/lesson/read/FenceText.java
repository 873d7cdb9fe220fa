package monochord.lesson.read;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import monochord.lesson.Part;
import monochord.lesson.Trouble;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.SourceSpan;

/** Reads a fenced block by the word behind its fence. */
final class FenceText {
    private static final List<String> WORDS = List.of("show", "listen", "compare", "ask", "code");
    private static final String KNOWN = "show, listen, compare, ask or code";

    private final Line fence;
    private final String word;
    private final List<Line> inside;
    private final Faults faults;

    private FenceText(Line fence, String word, List<Line> inside, Faults faults) {
        this.fence = fence;
        this.word = word;
        this.inside = inside;
        this.faults = faults;
    }

    /** @param lines of the whole file */
    static Optional<Part> read(FencedCodeBlock block, List<Line> lines, Faults faults) {
        List<SourceSpan> spans = block.getSourceSpans(); // an empty line has none
        int first = spans.get(0).getLineIndex();
        int last = spans.get(spans.size() - 1).getLineIndex();
        boolean closed = block.getClosingFenceLength() != null;
        String word = block.getInfo() == null ? "" : block.getInfo();
        FenceText text =
                new FenceText(lines.get(first), word, lines.subList(first + 1, closed ? last : last + 1), faults);
        if (!closed) {
            text.fault(
                    0,
                    "the block is not closed",
                    "write " + block.getFenceCharacter().repeat(3) + " on a line below it");
        }
        return text.part();
    }

    private Optional<Part> part() {
        if (!WORDS.contains(word)) {
            unknownWord();
            return Optional.empty();
        }
        List<Line> said = inside.stream().filter(line -> !line.isBlank()).toList();
        if (said.isEmpty()) {
            fault(0, "the " + word + " block is empty", "write " + example() + " in it");
            return Optional.empty();
        }
        return part(said);
    }

    private Optional<Part> part(List<Line> said) {
        return switch (word) {
            case "show" -> MusicLines.show(fence.number(), said, faults);
            case "listen" -> MusicLines.listen(fence.number(), said, faults);
            case "compare" -> MusicLines.compare(fence.number(), said, faults);
            case "ask" -> AskText.read(fence.number(), said, faults).map(Part.class::cast);
            default -> Optional.of(code());
        };
    }

    private Part code() {
        return new Part.Code(fence.number(), inside.stream().map(Line::text).collect(Collectors.joining("\n")));
    }

    private String example() {
        return switch (word) {
            case "show" -> "a chord, a scale or numerals";
            case "ask" -> "skill: and what to ask";
            case "code" -> "a line of Java";
            default -> "numerals or a scale";
        };
    }

    private void unknownWord() {
        int place = Math.max(0, fence.text().indexOf(word.isEmpty() ? "`" : word));
        if (word.isEmpty()) {
            fault(0, "a block without a word", "write " + KNOWN + " behind the fence");
        } else if (word.contains(" ") && WORDS.contains(word.substring(0, word.indexOf(' ')))) {
            String known = word.substring(0, word.indexOf(' '));
            fault(place + known.length() + 1, "more than one word behind the fence", "write " + known + " alone");
        } else {
            faults.in(fence, 0, Trouble.unknown(place, "block", word, WORDS));
        }
    }

    private void fault(int place, String what, String instead) {
        int start = place == 0 ? fence.whole().place() : place;
        faults.in(fence, 0, new Trouble(start, what, instead));
    }
}
