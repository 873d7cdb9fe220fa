package monochord.harmony.contrast;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/** Puts a {@link Contrast} into a few sentences. */
public final class ComparisonText {
    private static final int MOST_TOLD = 6;
    private static final Phrase.Forms MOVED =
            new Phrase.Forms("{0} half step moved", "{0} half steps moved", "no half steps moved");
    private static final Phrase.Forms HELD = new Phrase.Forms("{0} note held", "{0} notes held", "no notes held");
    private static final Phrase.Forms PARALLELS =
            new Phrase.Forms("{0} parallel fifth or octave", "{0} parallel fifths or octaves", "nothing in parallel");

    private final Contrast contrast;

    public ComparisonText(Contrast contrast) {
        this.contrast = contrast;
    }

    /** How one side moves: {@code 9 half steps moved, 6 notes held, nothing in parallel}; nothing without two chords. */
    public static Phrase numbers(ComparedVersion side) {
        return side.steps().isEmpty()
                ? Phrase.NOTHING
                : Phrase.of(
                        "{0}, {1}, {2}",
                        Phrase.counted(side.moved(), MOVED, side.moved()),
                        Phrase.counted(side.held(), HELD, side.held()),
                        Phrase.counted(side.parallels(), PARALLELS, side.parallels()));
    }

    /** What differs, a sentence each; at least one. */
    public List<Phrase> differences() {
        List<Phrase> said = new ArrayList<>();
        chords(said);
        tune(said);
        if (said.isEmpty() && !contrast.isChordByChord()) {
            tones(said);
        }
        top(said);
        return said.isEmpty() ? List.of(underneath()) : List.copyOf(said);
    }

    /** Where neither chords nor tune nor top tell them apart: the first chord that is held otherwise, or the times. */
    private Phrase underneath() {
        List<Contrast.Changed<List<Pitch>>> keys = contrast.keys();
        if (!keys.isEmpty()) {
            Contrast.Changed<List<Pitch>> one = keys.get(0);
            return Phrase.counted(
                    keys.size(),
                    "Other keys for chord {0}: {1}, then {2}.",
                    "Other keys for chord {0}: {1}, then {2}; others too.",
                    one.at() + 1,
                    row(one.from()),
                    row(one.to()));
        }
        return contrast.first().lengths().equals(contrast.second().lengths())
                ? Phrase.sentence("Both are the same, key for key.")
                : Phrase.sentence("The same keys, held for other lengths.");
    }

    private void chords(List<Phrase> said) {
        if (contrast.isChordByChord()) {
            if (!contrast.chords().isEmpty()) {
                List<Phrase> changes = told(contrast.chords().stream()
                        .map(change ->
                                Phrase.of("chord {0}, {1} for {2}", change.at() + 1, change.to(), change.from())));
                said.add(Phrase.sentence(
                        "Changed: {0}.", upToMost(changes, contrast.chords().size())));
            }
        } else if (!contrast.first().chords().isEmpty()
                && !contrast.second().chords().isEmpty()) {
            onlyChords(contrast.leftOut())
                    .ifPresent(chords -> said.add(Phrase.sentence("Only in the first: {0}.", chords)));
            onlyChords(contrast.added())
                    .ifPresent(chords -> said.add(Phrase.sentence("Only in the second: {0}.", chords)));
        }
    }

    private void tune(List<Phrase> said) {
        if (!contrast.notes().isEmpty()) {
            List<Phrase> changes = told(contrast.notes().stream()
                    .map(change -> Phrase.of("note {0}, {1} for {2}", change.at() + 1, change.to(), change.from())));
            Phrase all = upToMost(changes, contrast.notes().size());
            said.add(
                    contrast.isChordByChord()
                            ? Phrase.sentence("In the tune: {0}.", all)
                            : Phrase.sentence("Changed: {0}.", all));
        }
    }

    private static List<Phrase> told(Stream<Phrase> changes) {
        return changes.limit(MOST_TOLD).toList();
    }

    private static Phrase upToMost(List<Phrase> told, int all) {
        Phrase joined = Phrase.joined("; ", told);
        return all > told.size() ? Phrase.of("{0}; and {1} more", joined, all - told.size()) : joined;
    }

    private static Optional<Phrase> onlyChords(List<Chord> chords) {
        if (chords.isEmpty()) {
            return Optional.empty();
        }
        Phrase told = Phrase.joined(", ", chords.stream().limit(MOST_TOLD).toList());
        return Optional.of(chords.size() > MOST_TOLD ? Phrase.of("{0}, and more", told) : told);
    }

    /** For scales and rows of notes: which tones only one side has. */
    private void tones(List<Phrase> said) {
        onlyTones(contrast.first(), contrast.second())
                .ifPresent(tones -> said.add(Phrase.sentence("Only in the first: {0}.", tones)));
        onlyTones(contrast.second(), contrast.first())
                .ifPresent(tones -> said.add(Phrase.sentence("Only in the second: {0}.", tones)));
    }

    private static Optional<Phrase> onlyTones(ComparedVersion side, ComparedVersion other) {
        List<NoteName> others = tones(other);
        List<NoteName> left =
                tones(side).stream().filter(name -> !others.contains(name)).toList();
        return left.isEmpty() ? Optional.empty() : Optional.of(Phrase.row(left));
    }

    private static List<NoteName> tones(ComparedVersion side) {
        return Stream.concat(side.voicings().stream().flatMap(List::stream), side.line().stream())
                .map(Pitch::name)
                .distinct()
                .toList();
    }

    private void top(List<Phrase> said) {
        List<Pitch> first = contrast.first().top();
        List<Pitch> second = contrast.second().top();
        if (first.size() > 1 && second.size() > 1 && !first.equals(second)) {
            said.add(Phrase.sentence("On top {0}, then {1}.", row(first), row(second)));
        }
    }

    private static Phrase row(List<Pitch> line) {
        Phrase told = Phrase.row(line.stream().limit(2 * MOST_TOLD).toList());
        return line.size() > 2 * MOST_TOLD ? Phrase.of("{0} …", told) : told;
    }
}
