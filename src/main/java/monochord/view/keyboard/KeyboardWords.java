package monochord.view.keyboard;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.text.Wrap;
import monochord.theory.Chord;
import monochord.theory.Scale;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/** What the pictures show, in words, one fact a line: for screen readers and for windows too narrow to draw in. */
public final class KeyboardWords {
    private static final int HANG = 2;

    private KeyboardWords() {}

    private static StyledText lines(List<Phrase> facts, Reader reader, int width) {
        return new StyledText(facts.stream()
                .flatMap(fact -> Wrap.line(fact.in(reader), width, HANG).stream())
                .toList());
    }

    /** One line a tone from the bass up, such as {@code D: third, in the bass.} */
    public static StyledText chord(Chord chord, Reader reader, int width) {
        return names(ToneRoles.close(chord), reader, width);
    }

    /** One line a tone from the tonic up to the octave. */
    public static StyledText scale(Scale scale, Reader reader, int width) {
        return names(ToneRoles.marked(scale), reader, width);
    }

    private static StyledText names(List<MarkedKey> marks, Reader reader, int width) {
        return lines(
                marks.stream()
                        .map(mark -> fact(
                                Phrase.of("{0}", mark.pitch().name()),
                                mark.role(),
                                mark.role().words()))
                        .toList(),
                reader,
                width);
    }

    /** One line a key from the lowest up, such as {@code A3: third.} */
    public static StyledText pitches(List<MarkedKey> marks, Reader reader, int width) {
        return lines(
                marks.stream()
                        .map(mark -> fact(
                                Phrase.of("{0}", mark.pitch()),
                                mark.role(),
                                mark.role().words()))
                        .toList(),
                reader,
                width);
    }

    /** One line a key, the left hand first, such as {@code A3: third, right hand.} */
    public static StyledText hands(List<MarkedKey> left, List<MarkedKey> right, Reader reader, int width) {
        Stream<Phrase> both = Stream.concat(
                left.stream().map(mark -> inHand(mark, ToneRole.LEFT_HAND)),
                right.stream().map(mark -> inHand(mark, ToneRole.RIGHT_HAND)));
        return lines(both.toList(), reader, width);
    }

    private static Phrase inHand(MarkedKey mark, ToneRole hand) {
        Phrase words = mark.role().words();
        Phrase both = words.isEmpty() ? hand.words() : Phrase.of("{0}, {1}", words, hand.words());
        return fact(Phrase.of("{0}", mark.pitch()), mark.role(), both);
    }

    private static Phrase fact(Phrase name, ToneRole role, Phrase words) {
        Phrase start = name.styled(role.style());
        return words.isEmpty() ? Phrase.of("{0}.", start) : Phrase.of("{0}: {1}.", start, words);
    }

    /** Two lines that stand under a picture: {@code left   F2 C3}. */
    static StyledText handLines(List<MarkedKey> left, List<MarkedKey> right, Reader reader, int width) {
        StyledLine leftHand = Phrase.of("left").styled(Style.QUIET).in(reader);
        StyledLine rightHand = Phrase.of("right").styled(Style.QUIET).in(reader);
        int label = Math.max(leftHand.columns(), rightHand.columns()) + HANG;
        return new StyledText(Stream.of(
                        handLine(leftHand, label, row(left).in(reader)),
                        handLine(rightHand, label, row(right).in(reader)))
                .flatMap(line -> Wrap.line(line, width, HANG).stream())
                .toList());
    }

    private static StyledLine handLine(StyledLine hand, int label, StyledLine pitches) {
        return hand.plus(" ".repeat(label - hand.columns())).plus(pitches);
    }

    private static Phrase row(List<MarkedKey> marks) {
        return Phrase.row(marks.stream()
                .map(mark -> Phrase.of("{0}", mark.pitch()).styled(mark.role().style()))
                .toList());
    }

    /** One line a chord with its tones from the lowest up, and the tones that stay from the chord before. */
    public static StyledText progression(List<ChordOnKeys> rows, Reader reader, int width) {
        List<Phrase> lines = new ArrayList<>();
        List<Pitch> before = List.of();
        for (ChordOnKeys row : rows) {
            lines.add(chordLine(row, before));
            before = row.pitches();
        }
        return lines(lines, reader, width);
    }

    private static Phrase chordLine(ChordOnKeys row, List<Pitch> before) {
        List<NoteName> kept = row.pitches().stream()
                .filter(pitch -> before.stream().anyMatch(pitch::soundsLike))
                .map(Pitch::name)
                .toList();
        Phrase stays = kept.isEmpty()
                ? Phrase.NOTHING
                : Phrase.counted(kept.size(), "{0} stays.", "{0} stay.", Phrase.row(kept));
        return Phrase.of(
                        "{0}, {1}: {2}.",
                        Phrase.of("{0}", row.chord()).styled(Style.STRONG),
                        row.numeral(),
                        Phrase.row(row.pitches().stream().map(Pitch::name).toList()))
                .then(stays);
    }
}
