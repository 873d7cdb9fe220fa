package monochord.view.music;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import monochord.harmony.bass.BassLine;
import monochord.harmony.bass.WalkingBass;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Chord;
import monochord.theory.note.Pitch;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * Lines for the bass under a progression.
 *
 * @param lines of the same progression, at least one
 */
public record BassAnswer(List<BassLine> lines) implements Answer {
    private static final String INDENT = "  ";

    public BassAnswer {
        lines = List.copyOf(lines);
    }

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        for (BassLine line : lines) {
            text.line(heading(line), Style.QUIET);
            if (line.isNew()) {
                text.add(INDENT).add(row(line), Style.STRONG);
                line.reasons().forEach(text::line);
            }
        }
        if (lines.stream().anyMatch(BassAnswer::isToBeAgreed)) {
            text.line(
                    Phrase.sentence("Agree it with the bass player first, and the chords put in with all."),
                    Style.QUIET);
        }
        return text.build().wrapped(look.width());
    }

    private static boolean isToBeAgreed(BassLine line) {
        return line.isNew() && line.style() != BassLine.BassStyle.WALKING;
    }

    private static Phrase heading(BassLine line) {
        return switch (line.style()) {
            case CHROMATIC ->
                line.isNew()
                        ? Phrase.sentence("The bass by steps:")
                        : Phrase.sentence("By steps the bass comes no further than it does on the roots; it stays.");
            case PEDAL ->
                line.isNew()
                        ? Phrase.sentence("The bass on a pedal:")
                        : Phrase.sentence(
                                "Neither the tonic nor the fifth degree can be held under two of these chords.");
            case WALKING -> Phrase.sentence("The bass walking, a note on every beat:");
        };
    }

    private static Phrase row(BassLine line) {
        if (line.style() != BassLine.BassStyle.WALKING) {
            return Phrase.row(line.chords().symbols());
        }
        List<Chord> chords = line.chords().chords();
        List<Phrase> parts = new ArrayList<>();
        for (int i = 0; i < chords.size(); i++) {
            parts.add(Phrase.of(
                    "{0}: {1}", chords.get(i), Phrase.row(pitches(line.walked().get(i)))));
        }
        return Phrase.joined(" | ", parts);
    }

    private static List<Pitch> pitches(List<WalkingBass.WalkedNote> notes) {
        return notes.stream().map(WalkingBass.WalkedNote::pitch).toList();
    }

    @Override
    public void json(Json json) {
        json.put("kind", "bass")
                .put("key", lines.get(0).before().key().toString())
                .objects(
                        "lines",
                        lines,
                        (object, line) -> object.put("style", line.style().toString())
                                .put("symbols", line.chords().chords())
                                .put(
                                        "notes",
                                        line.walked().stream()
                                                .flatMap(BassAnswer::names)
                                                .toList())
                                .put(
                                        "reasons",
                                        line.reasons().stream()
                                                .map(Phrase::toString)
                                                .toList()));
    }

    private static Stream<Pitch> names(List<WalkingBass.WalkedNote> notes) {
        return pitches(notes).stream();
    }
}
