package monochord.view.keyboard;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.text.Wrap;
import monochord.theory.Chord;
import monochord.theory.Pitch;
import monochord.theory.Scale;
import monochord.theory.Signs;

/** What the pictures show, in words, one fact a line: for screen readers and for windows too narrow to draw in. */
public final class KeyboardWords {
    private static final int HANG = 2;

    private KeyboardWords() {}

    private static StyledText wrapped(StyledText facts, int width) {
        return new StyledText(facts.lines().stream()
                .flatMap(line -> Wrap.line(line, width, HANG).stream())
                .toList());
    }

    /** One line a tone from the bass up, such as {@code D: third, in the bass.} */
    public static StyledText chord(Chord chord, Signs signs, int width) {
        return wrapped(names(Roles.close(chord), signs), width);
    }

    /** One line a tone from the tonic up to the octave. */
    public static StyledText scale(Scale scale, Signs signs, int width) {
        return wrapped(names(Roles.marked(scale), signs), width);
    }

    private static StyledText names(List<Marked> marks, Signs signs) {
        return new StyledText(marks.stream()
                .map(mark -> fact(mark.pitch().name().write(signs), mark.role(), ""))
                .toList());
    }

    /** One line a key from the lowest up, such as {@code A3: third.} */
    public static StyledText pitches(List<Marked> marks, Signs signs, int width) {
        return wrapped(heights(marks, signs, ""), width);
    }

    /** One line a key, the left hand first, such as {@code A3: third, right hand.} */
    public static StyledText hands(List<Marked> left, List<Marked> right, Signs signs, int width) {
        return wrapped(heights(left, signs, "left hand").plus(heights(right, signs, "right hand")), width);
    }

    private static StyledText heights(List<Marked> marks, Signs signs, String hand) {
        return new StyledText(marks.stream()
                .map(mark -> fact(mark.pitch().write(signs), mark.role(), hand))
                .toList());
    }

    private static StyledLine fact(String name, Role role, String hand) {
        String facts = role.words() + (role.words().isEmpty() || hand.isEmpty() ? "" : ", ") + hand;
        StyledLine start = StyledLine.of(name, role.style());
        return facts.isEmpty() ? start.plus(".") : start.plus(": " + facts + ".");
    }

    /** Two lines that stand under a picture: {@code left   F2 C3}. */
    static StyledText handLines(List<Marked> left, List<Marked> right, Signs signs, int width) {
        return wrapped(StyledText.of(handLine("left   ", left, signs), handLine("right  ", right, signs)), width);
    }

    private static StyledLine handLine(String hand, List<Marked> marks, Signs signs) {
        StyledLine line = StyledLine.of(hand, Style.QUIET);
        for (Marked mark : marks) {
            line = line.plus(mark.pitch().write(signs), mark.role().style()).plus(" ");
        }
        return line.stripTrailing();
    }

    /** One line a chord with its tones from the lowest up, and the tones that stay from the chord before. */
    public static StyledText progression(List<ChordRow> rows, Signs signs, int width) {
        List<StyledLine> lines = new ArrayList<>();
        List<Pitch> before = List.of();
        for (ChordRow row : rows) {
            lines.add(chordLine(row, before, signs));
            before = row.pitches();
        }
        return wrapped(new StyledText(lines), width);
    }

    private static StyledLine chordLine(ChordRow row, List<Pitch> before, Signs signs) {
        String kept = row.pitches().stream()
                .filter(pitch -> before.stream().anyMatch(pitch::soundsLike))
                .map(pitch -> pitch.name().write(signs))
                .collect(Collectors.joining(" "));
        String tones =
                row.pitches().stream().map(pitch -> pitch.name().write(signs)).collect(Collectors.joining(" "));
        String stays = kept.isEmpty() ? "" : " " + kept + (kept.contains(" ") ? " stay." : " stays.");
        return StyledLine.of(row.chord().write(signs), Style.STRONG)
                .plus(", " + row.numeral().write(signs) + ": " + tones + "." + stays);
    }
}
