package monochord.shell.sound;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import monochord.harmony.contrast.ComparedVersion;
import monochord.harmony.contrast.Contrast;
import monochord.harmony.contrast.Telling;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Key;
import monochord.theory.Pitch;
import monochord.theory.Signs;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Title;

/**
 * Two versions that are heard one after the other, and what differs.
 *
 * @param titles of both
 * @param advice how to hear them again
 * @param remark what the sound room has to say, or nothing
 */
public record CompareAnswer(List<Title> titles, Contrast contrast, Key key, int tempo, String advice, String remark)
        implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder();
        text.line(side("First ", titles.get(0), contrast.first()));
        text.line(side("Then ", titles.get(1), contrast.second()));
        new Telling(contrast).differences().forEach(text::line);
        if (changes()) {
            text.line("Agree a changed chord with the band first.", Style.QUIET);
        }
        text.line(advice, Style.QUIET);
        if (!remark.isEmpty()) {
            text.line(remark, Style.QUIET);
        }
        return text.build().in(look.signs()).wrapped(look.width());
    }

    private boolean changes() {
        return contrast.first().chords().size() > 1
                && !contrast.first().chords().equals(contrast.second().chords());
    }

    private static String side(String name, Title title, ComparedVersion side) {
        String numbers = Telling.numbers(side);
        return name + title + (numbers.isEmpty() ? "" : ": " + numbers) + ".";
    }

    /** Whether there is a sound card is no matter of the music. */
    @Override
    public Optional<Answer> noted() {
        return Optional.of(new CompareAnswer(titles, contrast, key, tempo, advice, ""));
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
                .put("remark", remark);
    }

    private List<String> differences() {
        return new Telling(contrast).differences().stream().map(Signs::toAscii).toList();
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
