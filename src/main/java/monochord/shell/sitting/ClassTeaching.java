package monochord.shell.sitting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import monochord.course.Course;
import monochord.course.JudgedAnswer;
import monochord.course.RoomLesson;
import monochord.harmony.MusicText;
import monochord.lesson.Filling;
import monochord.lesson.LessonPart;
import monochord.practice.Question;
import monochord.shell.playback.Hearing;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.naming.AsTyped;
import monochord.theory.Key;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.ClassAnswer;
import monochord.view.ProseAnswer;
import monochord.view.Statement;
import monochord.view.course.CalledOut;
import monochord.view.course.LessonHead;
import monochord.view.course.VerdictAnswer;
import monochord.view.music.MusicAnswer;

/**
 * Shows a lesson to a class, and takes what is called out. A name before an answer stays with it until the verdict, and goes
 * into no notebook.
 */
public final class ClassTeaching {
    private static final String IN = "in ";
    private static final Phrase HOW = Phrase.sentence(
            "Enter goes on, back goes back, {0} takes another key, skip ends it. Answers are typed as they are called out; a name and a colon before one says whose it is.",
            Phrase.toType("in A"));

    /** One name or two before a colon. */
    private static final Pattern NAMED = Pattern.compile("([\\p{L}][\\p{L}.'’-]*(?: [\\p{L}][\\p{L}.'’-]*)?) *: *(.+)");

    private static final Pattern SAID_BEFORE_AN_ANSWER =
            Pattern.compile("(?i)(?:the )?answer|(?:left|right)(?: hand)?");

    private final RoomLesson room;
    private boolean isNewPage;

    ClassTeaching(RoomLesson room) {
        this.room = room;
    }

    /** The first thing, and how to go on. */
    Answer begin(Sitting sitting) {
        sitting.linePlace().isSaidThere();
        return Answers.of(look(sitting), Statement.of(HOW.styled(Style.QUIET)));
    }

    /** Whether a line is meant for the class: another key, or an answer that was called out. */
    public boolean takes(String line) {
        return namesKey(line) || room.isAsking() || isTooEarly(line);
    }

    /** Whether an answer is called out, by its name, before anything is asked or after it was told. */
    public boolean isTooEarly(String line) {
        return !namesKey(line) && !room.isAsking() && named(line).matches();
    }

    private static boolean namesKey(String line) {
        return line.toLowerCase(Locale.ROOT).startsWith(IN);
    }

    /** The verdict on such a line, which the class does not hear yet; none where it names another key. */
    public Optional<RoomLesson.Called> judge(String line, NoteNaming naming) {
        return namesKey(line) ? Optional.empty() : room.question().map(question -> called(line, question, naming));
    }

    /** What stands before a colon is a name, unless it is music or a subject said again: {@code E minor: E F#}. */
    private static RoomLesson.Called called(String line, Question question, NoteNaming naming) {
        Matcher named = named(line);
        return named.matches()
                ? new RoomLesson.Called(named.group(1), JudgedAnswer.of(named.group(2), question, naming))
                : new RoomLesson.Called("", JudgedAnswer.of(line, question, naming));
    }

    private static Matcher named(String line) {
        Matcher named = NAMED.matcher(line.strip());
        return named.matches() && isNoName(named.group(1)) ? NAMED.matcher("") : named;
    }

    /** {@code E minor}; what is one word and could be a chord is a name all the same, such as Bo. */
    private static boolean isNoName(String text) {
        if (text.length() > 1 && text.indexOf(' ') < 0) {
            return SAID_BEFORE_AN_ANSWER.matcher(text).matches();
        }
        try {
            MusicText.read(text, Key.parse("C"));
            return true;
        } catch (Unreadable name) {
            return SAID_BEFORE_AN_ANSWER.matcher(text).matches();
        }
    }

    /** A line as a notebook keeps it, without a pupil's name. */
    public String nameless(String line) {
        Matcher named = named(line);
        return named.matches() && !namesKey(line) ? named.group(2) : line;
    }

    /** Whether the class has something new before it, so that the board is to be cleared; once for each. */
    public boolean takeNewPage() {
        boolean taken = isNewPage;
        isNewPage = false;
        return taken;
    }

    /** Holds an answer that was called out. */
    public Answer take(RoomLesson.Called answer) {
        room.hold(answer);
        Phrase next = Phrase.sentence("Another answer, or Enter for the verdict.");
        Answer nameless = Statement.of(Phrase.sentence("Noted.").then(next));
        return answer.name().isEmpty()
                ? nameless
                : new ClassAnswer(
                        Statement.of(Phrase.sentence("Noted for {0}.", Phrase.typed(answer.name()))
                                .then(next)),
                        nameless);
    }

    /** Shows the same in the key that the line names. */
    public Answer inAnotherKey(String line, Sitting sitting) {
        AsTyped named = AsTyped.of(line.substring(IN.length()).strip(), sitting.naming());
        Key chosen = Course.majorKey(Key.parse(named.english()));
        sitting.settle(chosen);
        room.inKey(chosen);
        return look(sitting);
    }

    /** The verdict on what was called out, or the next thing. */
    Answer next(Sitting sitting) {
        if (room.isAsking()) {
            return told();
        }
        room.forward();
        return room.isOver()
                ? Statement.of(Phrase.sentence(
                        "End of {0}.", Phrase.typed(room.lesson().title())))
                : look(sitting);
    }

    private Answer told() {
        List<RoomLesson.Called> called = room.tell();
        return new ClassAnswer(told(called, true), told(called, false));
    }

    private Answer told(List<RoomLesson.Called> called, boolean withNames) {
        var question = room.question().orElseThrow();
        List<Answer> all = new ArrayList<>();
        tally(called).ifPresent(tally -> all.add(Statement.of(tally)));
        byAnswer(called)
                .forEach((typed, same) -> all.add(new CalledOut(
                        heading(typed, withNames ? names(same) : List.of()),
                        new VerdictAnswer(question, same.get(0).answer().verdict(), List.of()))));
        all.add(Statement.of(question.derivation()));
        return new Answers(all);
    }

    /** How many of several were right. */
    private static Optional<Phrase> tally(List<RoomLesson.Called> called) {
        int right = (int) called.stream()
                .filter(one -> one.answer().verdict().grade().isRight())
                .count();
        Phrase some = right == 0 ? Phrase.of("none") : Phrase.number(right);
        return called.size() < 2
                ? Optional.empty()
                : Optional.of(Phrase.sentence("{0} answers, {1} right.", Phrase.number(called.size()), some));
    }

    /** Who gave the same answer is named together, in the order in which it was first called. */
    private static Map<String, List<RoomLesson.Called>> byAnswer(List<RoomLesson.Called> called) {
        return called.stream()
                .collect(Collectors.groupingBy(
                        one -> one.answer().text().typed(), LinkedHashMap::new, Collectors.toList()));
    }

    private static List<Phrase> names(List<RoomLesson.Called> called) {
        return called.stream()
                .map(RoomLesson.Called::name)
                .filter(name -> !name.isEmpty())
                .distinct()
                .map(Phrase::typed)
                .toList();
    }

    private static Phrase heading(String typed, List<Phrase> names) {
        return names.isEmpty()
                ? Phrase.of("{0}:", Phrase.typed(typed))
                : Phrase.of("{0}, {1}:", Phrase.typed(typed), Phrase.list(names));
    }

    /** The thing before. */
    Answer back(Sitting sitting) {
        room.back();
        return look(sitting);
    }

    /** Its title and key above what the class looks at. */
    private Answer look(Sitting sitting) {
        isNewPage = true;
        Answer step = room.look() instanceof RoomLesson.ClassStep.Shown shown
                ? shown(shown.part(), sitting)
                : Hearing.put(room.question().orElseThrow(), sitting.stage().ear());
        return new ClassAnswer(Answers.of(new LessonHead(room.lesson(), room.key()), step));
    }

    private Answer shown(LessonPart part, Sitting sitting) {
        if (part instanceof LessonPart.ProsePart prose) {
            return new ProseAnswer(prose.blocks(), new Filling(room.key())::of);
        }
        if (part instanceof LessonPart.Show show) {
            return MusicAnswer.of(MusicText.read(show.sentence(), room.key()), room.key());
        }
        return LessonTeaching.played(part, room.key(), sitting);
    }
}
