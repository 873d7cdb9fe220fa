package monochord.shell.sitting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import monochord.course.Course;
import monochord.lesson.read.LibraryEntry;
import monochord.practice.Mistake;
import monochord.practice.Question;
import monochord.shell.playback.Ear;
import monochord.theory.Key;
import monochord.theory.note.Signs;
import monochord.view.Answer;
import monochord.view.Look;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Three people who are made up walk from 1.1 to the last page of the last lesson, in one sitting and in one key each. None
 * is asked for a chord, a suffix or a scale that no screen before the question has named.
 */
class WholeCourseTest {
    private static final Course OURS = new Course(Path.of("lessons"));
    private static final int MOST_TURNS = 400;
    private static final Look LOOK = new Look(80, Signs.MUSIC, false, false);

    /** Who walks, in which key, and what they do at a question. */
    private enum Person {
        /** Knows everything at once. */
        QUICK("C") {
            @Override
            Answer meets(Question question, Sitting sitting) {
                return sitting.teaching().answer(question.expected());
            }
        },
        /** Makes each mistake there is, and then is told. */
        SLOW("E") {
            @Override
            Answer meets(Question question, Sitting sitting) {
                for (Mistake mistake : question.mistakes()) {
                    if (sitting.question().isOpen()) {
                        sitting.teaching().answer(mistake.answer());
                    }
                }
                return sitting.question().isOpen()
                        ? sitting.teaching().tell()
                        : sitting.teaching().goOn();
            }
        },
        /** Passes what is not for the ear, and is told the rest. */
        IMPATIENT("Db") {
            @Override
            Answer meets(Question question, Sitting sitting) {
                return question.isByEar()
                        ? sitting.teaching().tell()
                        : sitting.teaching().goOn();
            }
        };

        private final Key key;

        Person(String key) {
            this.key = Key.parse(key);
        }

        abstract Answer meets(Question question, Sitting sitting);
    }

    /** A numeral or a number in a subject, and what it stands with. */
    private static final Pattern CHORD = Pattern.compile(
            "(?<![\\w/#b])([b#]?)(VII|VI|IV|III|II|V|I|vii|vi|iv|iii|ii|v|i|[1-7])(°|ø|o)?(-)?(maj7|maj9|7sus4|sus4|sus2|add9|6/9|13|11|9|7)?");

    private static final Map<String, String> INTERVALS = Map.of(
            "2", "second", "3", "third", "4", "fourth", "5", "fifth", "6", "sixth", "7", "seventh", "8", "octave", "10",
            "tenth");

    /** Where a subject is a row of chords, one chord, or two. */
    private static final Set<String> OF_CHORDS = Set.of(
            "borrowed-chord",
            "borrowed-source",
            "common-tones",
            "ear-progression",
            "next-chord",
            "progression-in-key",
            "progression-numbers",
            "voicing",
            "suspension",
            "inversion",
            "applied-dominant");

    /** What one person has seen. */
    private static final class Way {
        private final Person person;
        private final Sitting sitting;
        private final StringBuilder seen = new StringBuilder();
        private final Set<String> untaught = new TreeSet<>();
        private int asked;
        private int looked;

        Way(Person person) {
            this.person = person;
            this.sitting =
                    new Sitting(Ear.silent(), new Random(person.ordinal())::nextLong, Path.of(""), OURS.afresh());
            sitting.setDisplay(LOOK, 24);
        }

        void walk() {
            for (LibraryEntry lesson : OURS.library().entries()) {
                sitting.settle(person.key);
                see(LessonStart.alone(lesson, Optional.of(person.key), sitting));
                int turns = 0;
                while (sitting.teaching().isInLesson() || sitting.question().isOpen()) {
                    assertTrue(turns++ < MOST_TURNS, lesson.number() + " goes on for ever");
                    see(next(lesson));
                }
                assertTrue(turns > 3, lesson.number());
            }
        }

        private Answer next(LibraryEntry lesson) {
            if (!sitting.question().isOpen()) {
                return sitting.teaching().goOn();
            }
            Question question = sitting.question().question();
            asked++;
            missing(question).forEach(what -> untaught.add(lesson.number() + " asks " + question + ": " + what));
            return person.meets(question, sitting);
        }

        private void see(Answer answer) {
            seen.append(' ').append(answer.text(LOOK).plain().replaceAll("\\s+", " "));
        }

        private List<String> missing(Question question) {
            String subject = question.subject();
            if (OF_CHORDS.contains(question.skillId()) && !question.key().isMinor()) {
                return CHORD.matcher(subject.replace(" shell", ""))
                        .results()
                        .flatMap(chord -> Stream.of(base(chord), suffix(chord)))
                        .filter(what -> !what.isEmpty())
                        .peek(what -> looked++)
                        .filter(what -> !isSeen(what))
                        .toList();
            }
            return switch (question.skillId()) {
                case "scale-spelling", "steps" -> isSeen(subject) ? List.of() : List.of(subject);
                case "interval" -> interval(subject);
                default -> List.of();
            };
        }

        private List<String> interval(String subject) {
            Matcher number = Pattern.compile("[mMPAd]([0-9]+)").matcher(subject);
            return !number.matches() || isSeen(INTERVALS.get(number.group(1))) ? List.of() : List.of(subject);
        }

        /** As print has it: ♭VI, or as a number ♭6. */
        private static String base(MatchResult chord) {
            String sign = chord.group(1).replace("b", "♭").replace("#", "♯");
            String ring = chord.group(3) == null ? "" : chord.group(3).replace("o", "°");
            return sign + chord.group(2) + ring;
        }

        private static String suffix(MatchResult chord) {
            return chord.group(5) == null ? "" : chord.group(5);
        }

        /** Small and capital letters count in numerals; the name of a scale begins a sentence, too. */
        private boolean isSeen(String what) {
            return seen.indexOf(what) >= 0
                    || what.length() > 3
                            && seen.toString().toLowerCase(Locale.ROOT).contains(what);
        }
    }

    @ParameterizedTest
    @EnumSource(Person.class)
    void isAskedOnlyForWhatWasTaught(Person person) {
        Way way = new Way(person);
        way.walk();
        assertEquals("", String.join("\n", way.untaught));
        assertTrue(way.asked > 600, "asked: " + way.asked);
        assertTrue(way.looked > 1000, "looked for: " + way.looked);
    }
}
