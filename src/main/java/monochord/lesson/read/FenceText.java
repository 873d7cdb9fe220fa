package monochord.lesson.read;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import monochord.lesson.LessonPart;
import monochord.lesson.Trouble;
import monochord.text.Phrase;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.SourceSpan;

/** Reads a fenced block by the word behind its fence. */
final class FenceText {
    private static final List<String> WORDS = List.of("show", "listen", "compare", "tune", "ask", "code");

    private final SourceLine fence;
    private final String word;
    private final List<SourceLine> inside;
    private final Tunes tunes;
    private final Faults faults;

    private FenceText(SourceLine fence, String word, List<SourceLine> inside, Tunes tunes, Faults faults) {
        this.fence = fence;
        this.word = word;
        this.inside = inside;
        this.tunes = tunes;
        this.faults = faults;
    }

    /** @param lines of the whole file */
    static Optional<LessonPart> read(FencedCodeBlock block, List<SourceLine> lines, Tunes tunes, Faults faults) {
        List<SourceSpan> spans = block.getSourceSpans(); // an empty line has none
        int first = spans.get(0).getLineIndex();
        int last = spans.get(spans.size() - 1).getLineIndex();
        boolean closed = block.getClosingFenceLength() != null;
        String word = block.getInfo() == null ? "" : block.getInfo();
        List<SourceLine> inside = lines.subList(first + 1, closed ? last : last + 1);
        FenceText text = new FenceText(lines.get(first), word, inside, tunes, faults);
        if (!closed) {
            text.fault(
                    0,
                    Phrase.of("the block is not closed"),
                    Phrase.of(
                            "write {0} on a line below it",
                            Phrase.typed(block.getFenceCharacter().repeat(3))));
        }
        return text.part();
    }

    private Optional<LessonPart> part() {
        if (!WORDS.contains(word)) {
            unknownWord();
            return Optional.empty();
        }
        List<SourceLine> said = inside.stream().filter(line -> !line.isBlank()).toList();
        if (said.isEmpty()) {
            fault(0, Phrase.of("the {0} block is empty", Phrase.typed(word)), example());
            return Optional.empty();
        }
        return part(said);
    }

    private Optional<LessonPart> part(List<SourceLine> said) {
        return switch (word) {
            case "show" -> MusicLines.show(fence.number(), said, faults);
            case "listen" -> MusicLines.listen(fence.number(), said, faults);
            case "compare" -> MusicLines.compare(fence.number(), said, faults);
            case "tune" -> new TuneText(tunes, faults).read(fence.number(), said);
            case "ask" -> AskText.read(fence.number(), said, faults).map(LessonPart.class::cast);
            default -> Optional.of(code());
        };
    }

    private LessonPart code() {
        return new LessonPart.Code(
                fence.number(), inside.stream().map(SourceLine::text).collect(Collectors.joining("\n")));
    }

    private Phrase example() {
        return Phrase.of(
                switch (word) {
                    case "show" -> "write a chord, a scale or numerals in it";
                    case "tune" -> "write the name of a tune's file in it, and behind it a place";
                    case "ask" -> "write skill: and what to ask in it";
                    case "code" -> "write a line of Java in it";
                    default -> "write numerals or a scale in it";
                });
    }

    private void unknownWord() {
        int place = Math.max(0, fence.text().indexOf(word.isEmpty() ? "`" : word));
        if (word.isEmpty()) {
            fault(
                    0,
                    Phrase.of("a block without a word"),
                    Phrase.of("write show, listen, compare, tune, ask or code behind the fence"));
        } else if (word.contains(" ") && WORDS.contains(word.substring(0, word.indexOf(' ')))) {
            String known = word.substring(0, word.indexOf(' '));
            fault(
                    place + known.length() + 1,
                    Phrase.of("more than one word behind the fence"),
                    Phrase.of("write {0} alone", Phrase.typed(known)));
        } else {
            faults.in(fence, 0, Trouble.unknown(place, Phrase.of("block"), word, WORDS));
        }
    }

    private void fault(int place, Phrase what, Phrase instead) {
        int start = place == 0 ? fence.whole().place() : place;
        faults.in(fence, 0, new Trouble(start, what, instead));
    }
}
