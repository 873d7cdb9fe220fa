package monochord.shell.sitting;

import java.nio.file.Path;
import java.util.List;
import java.util.function.LongSupplier;
import monochord.harmony.Music;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Verdict;
import monochord.shell.answer.Answer;
import monochord.shell.answer.Answers;
import monochord.shell.answer.AskAnswer;
import monochord.shell.answer.Look;
import monochord.shell.answer.Saying;
import monochord.shell.answer.VerdictAnswer;
import monochord.sound.Performance;
import monochord.theory.Key;
import monochord.theory.NoteName;

/** One sitting at the line: where we are, what is open, and what comes next. */
public final class Sitting {
    private final Ear ear;
    private final LongSupplier seeds;
    private final Path folder;
    private final Course course;
    private final Desk desk = new Desk();
    private Key key = Key.major(NoteName.C);
    private Music lastMusic;
    private Performance lastPerformance;
    private Look look = Look.ofPipe();
    private int screenLines = Integer.MAX_VALUE;
    private boolean ended;

    /**
     * @param seeds where chance comes from
     * @param folder where file names that are not absolute begin
     */
    public Sitting(Ear ear, LongSupplier seeds, Path folder, Course course) {
        this.ear = ear;
        this.seeds = seeds;
        this.folder = folder;
        this.course = course;
    }

    public Key key() {
        return key;
    }

    /** Makes this the key in which everything is read that names no other. */
    public void settle(Key newKey) {
        key = newKey;
    }

    /** Tells how answers will look, and how many lines the learner sees at once. */
    public void faces(Look screen, int lines) {
        look = screen;
        screenLines = lines;
    }

    Look look() {
        return look;
    }

    int screenLines() {
        return screenLines;
    }

    public Ear ear() {
        return ear;
    }

    public long nextSeed() {
        return seeds.getAsLong();
    }

    public Path folder() {
        return folder;
    }

    public Course course() {
        return course;
    }

    public Desk desk() {
        return desk;
    }

    /** What was shown or played last, the last of several, or null. */
    public Music lastMusic() {
        return lastMusic;
    }

    /** How it was last played, or null if it was only shown. */
    public Performance lastPerformance() {
        return lastPerformance;
    }

    public void remember(Music shown) {
        lastMusic = shown;
        lastPerformance = null;
    }

    public void remember(Performance performance, List<Music> played) {
        lastMusic = played.get(played.size() - 1);
        lastPerformance = performance;
    }

    /** Puts a question that was asked for by name; a lesson that is being taken waits. */
    public void ask(Skill skill, Question question) {
        if (desk.isOpen() && !desk.isByName()) {
            course.keep(desk.question());
        }
        desk.put(skill, question);
    }

    /** Judges an answer to the open question; after a right one goes on by itself in a lesson. */
    public Answer answer(String text) {
        Question question = desk.question();
        Verdict verdict = desk.answer(text);
        if (!verdict.grade().isRight()) {
            return new VerdictAnswer(question, verdict, "Try again, or: hint, why, tell. Enter leaves it and goes on.");
        }
        note(desk.wasRightAtOnce());
        return course.isOpen()
                ? Answers.of(new VerdictAnswer(question, verdict, ""), goOn())
                : new VerdictAnswer(question, verdict, "Enter for another.");
    }

    /** Takes the open question off the desk without an answer. */
    public void leaveQuestion() {
        if (desk.isOpen()) {
            note(false);
            desk.clear();
        }
    }

    /** Counts what came of a question, if it was one of the lesson. */
    private void note(boolean rightAtOnce) {
        if (!desk.isByName()) {
            course.noteAnswer(rightAtOnce);
        }
    }

    /** What comes next when the learner only says go on. */
    public Answer goOn() {
        if (desk.isOpen() && !desk.isTried()) {
            return new AskAnswer(desk.question());
        }
        leaveQuestion();
        if (course.isOpen()) {
            return course.goOn(this);
        }
        return desk.isByName() ? askAgain(desk.lastSkill()) : course.begin(this);
    }

    private Answer askAgain(Skill skill) {
        Question next = skill.question(key, nextSeed());
        Question before = desk.lastQuestion();
        if (before != null && next.toString().equals(before.toString())) {
            next = skill.question(key, nextSeed());
        }
        desk.put(skill, next);
        return new AskAnswer(next);
    }

    public void end() {
        ear.stop();
        ended = true;
    }

    public boolean hasEnded() {
        return ended;
    }

    /** Said where there is nothing to go on with. */
    static Answer idle() {
        return Saying.of("Type a chord, a progression, a verb, or help.");
    }
}
