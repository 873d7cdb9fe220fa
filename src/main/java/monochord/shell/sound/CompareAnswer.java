package monochord.shell.sound;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import monochord.harmony.contrast.ComparedVersion;
import monochord.harmony.contrast.ComparisonText;
import monochord.harmony.contrast.Contrast;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Key;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * Two versions that are heard one after the other, and what differs.
 *
 * @param titles of both
 * @param advice how to hear them again
 * @param remark what the sound room has to say; empty for nothing
 */
public record CompareAnswer(List<Phrase> titles, Contrast contrast, Key key, int tempo, Phrase advice, Phrase remark)
        implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        text.line(first()).line(then());
        new ComparisonText(contrast).differences().forEach(text::line);
        if (changes()) {
            text.line(Phrase.sentence("Agree a changed chord with the band first."), Style.QUIET);
        }
        text.line(advice, Style.QUIET);
        if (!remark.isEmpty()) {
            text.line(remark, Style.QUIET);
        }
        return text.build().wrapped(look.width());
    }

    private Phrase first() {
        Phrase numbers = ComparisonText.numbers(contrast.first());
        return numbers.isEmpty()
                ? Phrase.sentence("First {0}.", titles.get(0))
                : Phrase.sentence("First {0}: {1}.", titles.get(0), numbers);
    }

    private Phrase then() {
        Phrase numbers = ComparisonText.numbers(contrast.second());
        return numbers.isEmpty()
                ? Phrase.sentence("Then {0}.", titles.get(1))
                : Phrase.sentence("Then {0}: {1}.", titles.get(1), numbers);
    }

    private boolean changes() {
        return contrast.first().chords().size() > 1
                && !contrast.first().chords().equals(contrast.second().chords());
    }

    /** Whether there is a sound card is no matter of the music. */
    @Override
    public Optional<Answer> noted() {
        return Optional.of(new CompareAnswer(titles, contrast, key, tempo, advice, Phrase.NOTHING));
    }

    @Override
    public void json(Json json) {
        json.put("kind", "compare")
                .put("key", key.toString())
                .put("tempo", tempo)
                .object("first", side -> json(side, contrast.first()))
                .object("second", side -> json(side, contrast.second()))
                .objects(
                        "changed",
                        contrast.chords(),
                        (one, change) -> one.put("at", change.at())
                                .put("from", change.from().toString())
                                .put("to", change.to().toString()))
                .put("differences", differences())
                .put("remark", remark.toString());
    }

    private List<String> differences() {
        return new ComparisonText(contrast)
                .differences().stream()
                        .map(Phrase::toString)
                        .map(Signs::toAscii)
                        .toList();
    }

    private static void json(Json json, ComparedVersion side) {
        List<List<Pitch>> voicings = side.voicings();
        json.put("symbols", side.chords())
                .objects(
                        "voicings",
                        IntStream.range(0, voicings.size()).boxed().toList(),
                        (one, i) -> one.put("keys", voicings.get(i)))
                .put("line", side.line())
                .put("moved", side.moved())
                .put("held", side.held())
                .put("parallels", side.parallels());
    }
}
