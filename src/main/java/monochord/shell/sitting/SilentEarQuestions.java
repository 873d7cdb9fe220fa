package monochord.shell.sitting;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import monochord.practice.Excerpt;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.shell.playback.Hearing;
import monochord.sound.file.WavFile;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Statement;
import monochord.view.course.AskAnswer;

/**
 * What becomes of questions for the ear where nothing sounds: the learner is asked once in a sitting whether they are left
 * out or put into sound files. They never count while they cannot be heard.
 */
public final class SilentEarQuestions {
    private static final Phrase CHOICE = Phrase.sentence(
            "Shall what is for the ear be left out, or put into sound files? Type leave or files; Enter leaves it out.");

    private final Sitting sitting;
    private Choice choice = Choice.NONE;
    private boolean isAsking;
    private int files;

    private enum Choice {
        NONE,
        LEAVE_OUT,
        FILES
    }

    SilentEarQuestions(Sitting sitting) {
        this.sitting = sitting;
    }

    private boolean isSilent() {
        return sitting.stage().ear().silence().isPresent();
    }

    /** Whether it is being asked what shall become of them. */
    boolean isAsking() {
        return isAsking;
    }

    /** Whether nothing of that skill is to be asked. */
    boolean leavesOut(Skill skill) {
        return choice == Choice.LEAVE_OUT && isSilent() && isForEar(skill);
    }

    private static boolean isForEar(Skill skill) {
        return skill.question(skill.keys().get(0), 0).isByEar();
    }

    /** Whether an answer to that question says nothing about the learner. */
    boolean spares(Question question) {
        return question.isByEar() && isSilent() && choice != Choice.FILES;
    }

    /** Whether what is to be heard can be heard, by itself or from a file. */
    boolean isHeard() {
        return !isSilent() || writesFiles();
    }

    /** Whether what is to be heard goes into files. */
    boolean writesFiles() {
        return choice == Choice.FILES && isSilent();
    }

    /** Puts the open question of a run or a lesson: as it is, or what becomes of it where nothing sounds. */
    Answer put() {
        Question question = sitting.question().question();
        Answer asked = sitting.teaching().asked();
        if (!question.isByEar() || !isSilent() || !sitting.isSeated()) {
            return asked;
        }
        return switch (choice) {
            case FILES -> inFile(question);
            case LEAVE_OUT -> leaveOut();
            case NONE -> {
                isAsking = true;
                Phrase reason = sitting.stage().ear().silence().orElseThrow();
                yield Statement.of(Phrase.sentence("No sound: {0}.", reason), CHOICE);
            }
        };
    }

    /** The learner would rather do something else than choose; the question stays, and is not counted. */
    public void forget() {
        isAsking = false;
    }

    /** From now on what is for the ear is left out, in this sitting. */
    public Answer leave() {
        isAsking = false;
        choice = Choice.LEAVE_OUT;
        return Answers.of(
                Statement.of(
                        Phrase.sentence("Left out in this sitting, and not counted; hear asks by ear all the same.")
                                .styled(Style.QUIET)),
                leaveOut());
    }

    private Answer leaveOut() {
        Teaching teaching = sitting.teaching();
        teaching.question().clear();
        return teaching.next().without(SilentEarQuestions::isForEar);
    }

    /** From now on what is for the ear is written to files, in this sitting. */
    public Answer toFiles() {
        isAsking = false;
        choice = Choice.FILES;
        return inFile(sitting.question().question());
    }

    private Answer inFile(Question question) {
        return new AskAnswer(question, question.heard().map(this::write).orElse(Phrase.NOTHING));
    }

    /** Writes what is to be heard beside the learner's files, and says where. */
    Phrase write(Excerpt excerpt) {
        try {
            String name = nextName();
            WavFile.write(Hearing.of(excerpt), sitting.outside().file(name));
            return Phrase.sentence("Listen to {0}.", Phrase.typed(name));
        } catch (IOException failed) {
            return sitting.outside().told(failed);
        }
    }

    /** A name that no file has. */
    private String nextName() {
        String name;
        Path file;
        do {
            files++;
            name = "ear-" + files + ".wav";
            file = sitting.outside().file(name);
        } while (Files.exists(file));
        return name;
    }
}
