package monochord.shell.sitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import monochord.course.Course;
import monochord.course.JudgedAnswer;
import monochord.course.RoomLesson;
import monochord.harmony.MusicText;
import monochord.lesson.Filling;
import monochord.lesson.Part;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.naming.AsTyped;
import monochord.theory.Key;
import monochord.theory.note.NoteNaming;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.ProseAnswer;
import monochord.view.Statement;
import monochord.view.Wide;
import monochord.view.course.VerdictAnswer;
import monochord.view.music.MusicAnswer;

/** Shows a lesson to a class, widely set, and takes what is called out. */
public final class ClassTeaching {
    private static final String IN = "in ";
    private static final Phrase HOW = Phrase.sentence(
            "Enter goes on, back goes back, {0} takes another key, skip ends it. Answers are typed as they are called out.",
            Phrase.toType("in A"));

    private final RoomLesson room;

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
        return namesKey(line) || room.isAsking();
    }

    private static boolean namesKey(String line) {
        return line.toLowerCase(Locale.ROOT).startsWith(IN);
    }

    /** The verdict on such a line, which the class does not hear yet; none where it names another key. */
    public Optional<JudgedAnswer> judge(String line, NoteNaming naming) {
        return namesKey(line)
                ? Optional.empty()
                : room.question().map(question -> JudgedAnswer.of(line, question, naming));
    }

    /** Holds an answer that was called out. */
    public Answer take(JudgedAnswer answer) {
        room.hold(answer);
        return Statement.of(Phrase.sentence("Noted. Another answer, or Enter for the verdict."));
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
        List<Answer> all = new ArrayList<>();
        var question = room.question().orElseThrow();
        for (JudgedAnswer judged : room.tell()) {
            Phrase typed = Phrase.typed(judged.text().typed());
            all.add(Statement.of(Phrase.of("{0}:", typed).styled(Style.STRONG)));
            all.add(new VerdictAnswer(question, judged.verdict(), List.of()));
        }
        all.add(Statement.of(question.derivation()));
        return new Wide(new Answers(all));
    }

    /** The thing before. */
    Answer back(Sitting sitting) {
        room.back();
        return look(sitting);
    }

    private Answer look(Sitting sitting) {
        return room.look() instanceof RoomLesson.Step.Shown shown
                ? shown(shown.part(), sitting)
                : new Wide(Hearing.put(
                        room.question().orElseThrow(), sitting.stage().ear()));
    }

    private Answer shown(Part part, Sitting sitting) {
        if (part instanceof Part.Prose prose) {
            return new Wide(new ProseAnswer(prose.blocks(), new Filling(room.key())::of));
        }
        if (part instanceof Part.Show show) {
            return MusicAnswer.of(MusicText.read(show.sentence(), room.key()), room.key());
        }
        return LessonTeaching.played(part, room.key(), sitting);
    }
}
