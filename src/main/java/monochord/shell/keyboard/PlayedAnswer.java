package monochord.shell.keyboard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.harmony.voicing.Voicing;
import monochord.practice.AnswerForm;
import monochord.practice.Grade;
import monochord.practice.Question;
import monochord.practice.reading.DegreeReading;
import monochord.practice.reading.NoteReading;
import monochord.theory.Chord;
import monochord.theory.Numeral;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Unreadable;

/**
 * Writes what was played as a line that answers a question.
 *
 * <p>Played notes have no letters and no bar between the hands. Of the ways to write them the one is taken that the question's
 * own judge likes best, so that the right keys are a right answer; keys are never left out or added.
 */
final class PlayedAnswer {
    /** Ten fingers, and some for slips; more is noise, not an answer. */
    private static final int MOST_KEYS = 20;

    private final Question question;
    private final Spelling spelling;

    PlayedAnswer(Question question) {
        this.question = question;
        this.spelling = new Spelling(question.key());
    }

    /** Whether a question of this form can be answered with the fingers. */
    static boolean isPlayable(AnswerForm form) {
        return switch (form) {
            case NOTES, CHORD, VOICING, PROGRESSION -> true;
            default -> false;
        };
    }

    /** The line for one gesture; nothing where it makes no answer. */
    Optional<PlayedLine> line(Gesture played) {
        Set<Integer> keys = new LinkedHashSet<>(played.keys());
        if (keys.isEmpty() || keys.size() > MOST_KEYS) {
            return Optional.empty();
        }
        return best(
                switch (question.form()) {
                    case NOTES -> notes(keys);
                    case CHORD -> Stream.concat(notes(keys), symbols(keys));
                    case VOICING -> voicings(keys.stream().sorted().toList());
                    default -> Stream.empty();
                });
    }

    private Optional<PlayedLine> best(Stream<PlayedLine> lines) {
        return lines.min(Comparator.comparing(this::grade));
    }

    private Grade grade(PlayedLine line) {
        return question.judge(line.english()).grade();
    }

    private Stream<List<NoteName>> namings(Set<Integer> keys) {
        return Stream.of(spelling.among(wanted(), keys), spelling.names(keys));
    }

    private Stream<PlayedLine> notes(Set<Integer> keys) {
        return namings(keys)
                .map(names -> PlayedLine.row(names.stream().distinct().toList(), NoteName::write));
    }

    private Stream<PlayedLine> symbols(Set<Integer> keys) {
        return namings(keys)
                .flatMap(names -> spelling.chord(names).stream())
                .map(chord -> new PlayedLine(chord::write));
    }

    /** The hands parted in every place. */
    private Stream<PlayedLine> voicings(List<Integer> keys) {
        Set<Integer> sorted = new LinkedHashSet<>(keys);
        return namings(sorted).flatMap(names -> {
            List<Pitch> pitches = Spelling.pitches(names, sorted);
            return byNearnessToMiddleC(keys)
                    .mapToObj(i -> new Voicing(pitches.subList(0, i), pitches.subList(i, pitches.size())))
                    .map(voicing -> new PlayedLine(voicing::write));
        });
    }

    private static IntStream byNearnessToMiddleC(List<Integer> keys) {
        return IntStream.rangeClosed(1, keys.size())
                .boxed()
                .sorted(Comparator.comparingInt(i -> Math.abs(i == keys.size() ? 60 : keys.get(i) - 60)))
                .mapToInt(i -> i);
    }

    /** The letters of the right answer, as far as it has some. */
    private List<NoteName> wanted() {
        try {
            return switch (question.form()) {
                case NOTES -> NoteReading.read(question.expected(), "");
                case CHORD -> Spelling.tones(Chord.parse(question.expected()));
                case VOICING -> Spelling.tones(Numeral.parse(question.subject()).in(question.key()));
                default -> List.of();
            };
        } catch (Unreadable noLetters) {
            return List.of();
        }
    }

    /** How many chords a row has. */
    int rowLength() {
        return row().size();
    }

    private List<Chord> row() {
        List<Chord> chords = new ArrayList<>();
        for (String token : question.expected().split("[ |]+")) {
            chord(token).ifPresent(chords::add);
        }
        return chords;
    }

    private Optional<Chord> chord(String token) {
        try {
            return Optional.of(Chord.parse(token));
        } catch (Unreadable notBySymbol) {
            return degree(token);
        }
    }

    private Optional<Chord> degree(String token) {
        try {
            return Optional.of(DegreeReading.read(token, question.key()).in(question.key()));
        } catch (Unreadable neither) {
            return Optional.empty();
        }
    }

    /**
     * One chord of a row, by the name that is due at this place if the keys are its keys, else by its own.
     *
     * @param place from 0
     */
    Optional<Chord> inRow(Gesture played, int place) {
        List<Chord> row = row();
        Set<Integer> keys = new LinkedHashSet<>(played.keys());
        Set<Integer> classes = keys.stream().map(key -> Math.floorMod(key, 12)).collect(Collectors.toSet());
        return Stream.of(row)
                .filter(chords -> place < chords.size())
                .map(chords -> chords.get(place))
                .filter(due -> Spelling.tones(due).stream()
                        .map(NoteName::pitchClass)
                        .collect(Collectors.toSet())
                        .equals(classes))
                .findFirst()
                .or(() -> spelling.chord(spelling.names(keys)));
    }

    /** The line for a whole row, in symbols or in numbers, as the question wants it. */
    Optional<PlayedLine> line(List<Chord> row) {
        return best(Stream.of(
                PlayedLine.row(row, Chord::write),
                PlayedLine.row(
                        row,
                        (chord, signs) -> Numeral.of(chord.over(chord.root()), question.key())
                                .write(signs))));
    }
}
