package monochord.shell.sitting;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import monochord.lesson.read.LibraryEntry;
import monochord.practice.Grade;
import monochord.practice.Question;
import monochord.practice.Verdict;
import monochord.practice.skill.Skills;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Key;
import monochord.theory.NoteName;
import monochord.theory.NoteNaming;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Saying;
import monochord.view.course.AskAnswer;

/**
 * How the first sitting opens: at most three questions that find where the learner begins. Enter passes each, a verb or
 * music ends them. The two about music are questions like any other, judged and kept.
 */
final class Welcome {
    private static final String GREETING =
            "Good day. Three short questions find where you begin; Enter passes each.\nMusic, a verb or help works at once.";
    private static final String NAMES = "What do you call the notes: english A B C, german A H C, or latin La Si Do?";
    private static final Pattern PASSES = Pattern.compile(
            "(?i)(no|nope|not yet|pass|next|(i'?m )?not sure|i (do not|don'?t) know|idk|dunno|no idea|\\?)[.!]?");
    private static final Key KEY = Key.major(NoteName.of('D', 0));

    private static final Place FIRST = new Place("1.1", "Then we begin at the beginning, on the keys.");
    private static final Place LETTERS = new Place("1.2", "Letters and signs are what to look at first.");
    private static final Place CHORDS = new Place("2.1", "Your scales stand, so the chords built on them come next.");
    private static final Place MOVING =
            new Place("3.1", "You know the key's own chords, so how they move comes next, and then the borrowed ones.");
    private static final Place COLOUR =
            new Place("5.1", "You can name a borrowed chord, so we begin with borrowed colour.");

    private enum Stage {
        NAMES,
        SCALE,
        CHORD,
        OVER
    }

    /**
     * Where a learner begins.
     *
     * @param lesson its number
     */
    private record Place(String lesson, String reason) {}

    private Stage stage = Stage.NAMES;
    /** On the last answer to the open question that could be read. */
    private Verdict last;

    Answer greeting() {
        return Saying.of(
                StyledText.builder().line(GREETING).line(NAMES, Style.STRONG).build());
    }

    boolean isOver() {
        return stage == Stage.OVER;
    }

    boolean asksForNames() {
        return stage == Stage.NAMES;
    }

    /** What the names were called by a word or by an example; none if the line is no answer to that. */
    Optional<Answer> takeNames(String line, Sitting sitting) {
        return naming(line.strip().toLowerCase(Locale.ROOT)).map(sitting::call);
    }

    private static Optional<NoteNaming> naming(String line) {
        return switch (line.replaceAll("[\\s,.()]+", " ").strip()) {
            case "a b c", "abc", "letters", "a b c d e f g", "c d e f g a b c" -> Optional.of(NoteNaming.ENGLISH);
            case "h", "a h c", "c d e f g a h c", "deutsch" -> Optional.of(NoteNaming.GERMAN);
            case "la si do", "do re mi", "do ré mi", "solfa" -> Optional.of(NoteNaming.LATIN);
            default -> NoteNaming.of(line);
        };
    }

    /** Whether the line says in words what Enter says. */
    static boolean passes(String line) {
        return PASSES.matcher(line.strip()).matches();
    }

    /** Passes what is asked. */
    Answer goOn(Sitting sitting) {
        return switch (stage) {
            case NAMES -> {
                String lead = "Can you name a major scale? Type its notes, or Enter if not yet.";
                yield ask(Stage.SCALE, lead, "scale-spelling", "major", sitting);
            }
            case SCALE -> place(isClose() ? LETTERS : FIRST, sitting);
            case CHORD, OVER -> place(isClose() ? MOVING : CHORDS, sitting);
        };
    }

    /** Whether the last answer was nearly right, or wrong in a way that somebody is who knows what it is about. */
    private boolean isClose() {
        return last != null && (last.grade() == Grade.NEARLY || last.misconception() != null);
    }

    private Answer ask(Stage next, String lead, String skill, String subject, Sitting sitting) {
        stage = next;
        Question question = Skills.find(skill).orElseThrow().question(KEY, subject);
        sitting.teaching().put(question, "");
        return Answers.of(Saying.of(lead), new AskAnswer(question));
    }

    /** What follows an answer to the question it asked: another try, the next question, or a place in the course. */
    Answer judged(Verdict verdict, Sitting sitting) {
        boolean again = last != null;
        last = verdict;
        if (!verdict.grade().isRight()) {
            return again ? goOn(sitting) : Saying.of("Once more, or Enter leaves it.");
        }
        if (stage == Stage.CHORD) {
            return place(COLOUR, sitting);
        }
        last = null;
        return ask(Stage.CHORD, "One from farther on; Enter if it is new to you.", "borrowed-chord", "bVI", sitting);
    }

    private Answer place(Place place, Sitting sitting) {
        end(sitting);
        Course course = sitting.course();
        course.library().find(place.lesson).map(LibraryEntry::slug).ifPresent(course::resume);
        String begins = course.next()
                .map(entry -> " Enter begins " + Course.title(entry) + "; lessons lists all, learn begins any.")
                .orElse("");
        return Saying.of(StyledText.of(place.reason + begins));
    }

    /** Ends the questions, for good. */
    void end(Sitting sitting) {
        if (stage == Stage.SCALE || stage == Stage.CHORD) {
            sitting.desk().clear();
        }
        stage = Stage.OVER;
        sitting.settings().keep(Opening.WELCOMED, "yes");
    }
}
