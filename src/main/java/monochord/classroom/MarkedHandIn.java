package monochord.classroom;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import monochord.lesson.Fault;

/**
 * One file, marked.
 *
 * @param file its name
 * @param assignment the id of the assignment; empty if the file is none
 * @param code nothing where the file names no pupil, and then nothing in it is marked
 * @param answers one for each question that could be read, answered or not
 * @param signs what else there is to know of it
 * @param given the day on which it was finished, as told by the file
 * @param faults what could not be read or does not fit, each with its place; none of them counts against the pupil
 */
public record MarkedHandIn(
        String file,
        String assignment,
        Optional<PupilCode> code,
        List<MarkedAnswer> answers,
        HandInSigns signs,
        Optional<LocalDate> given,
        List<Fault> faults) {
    /**
     * What a teacher looks at first.
     *
     * @param altered whether it is no longer the assignment that was given out
     * @param late whether it was finished after the last day, as told by the file
     * @param unknown whether no pupil on the teacher's list has its code
     */
    public record HandInSigns(boolean altered, boolean late, boolean unknown) {
        static final HandInSigns NONE = new HandInSigns(false, false, false);
    }

    public MarkedHandIn {
        answers = List.copyOf(answers);
        faults = List.copyOf(faults);
    }

    /** The same without its answers, for a list of many; {@link #right} and {@link #of} tell nothing then. */
    public MarkedHandIn withoutAnswers() {
        return new MarkedHandIn(file, assignment, code, List.of(), signs, given, faults);
    }

    /** How many questions are answered rightly. */
    public int right() {
        return (int) answers.stream().filter(MarkedAnswer::isRight).count();
    }

    /** How many questions it is out of: those that could be read. */
    public int of() {
        return answers.size();
    }
}
