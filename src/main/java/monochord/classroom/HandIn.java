package monochord.classroom;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import monochord.theory.note.NoteNaming;

/**
 * What one pupil hands in: the assignment as it stands in the file, and the answers to it.
 *
 * @param digest of the assignment that was given out, as the file tells it; empty if it tells none
 * @param code nothing where the file names no pupil, or none that can be read
 * @param notes by what names its notes are called
 * @param given the day on which it was finished, as told by the file
 * @param answers those that were given, one for a question at most
 * @param places on which line of the file each question stands, by its number; empty for one that is not in a file yet
 */
public record HandIn(
        Assignment assignment,
        String digest,
        Optional<PupilCode> code,
        NoteNaming notes,
        Optional<LocalDate> given,
        List<GivenAnswer> answers,
        Map<Integer, Integer> places) {
    /**
     * What was answered to one question.
     *
     * @param tries one after the other, as they were typed
     * @param help how many hints were taken, as told by the file
     * @param seconds how long it took, as told by the file; 0 if it tells nothing
     */
    public record GivenAnswer(int item, List<TypedAnswer> tries, int help, int seconds) {
        public GivenAnswer {
            tries = List.copyOf(tries);
        }
    }

    /**
     * One answer, and where it stands in its file.
     *
     * @param line from 1
     * @param column from 1
     */
    public record TypedAnswer(String text, int line, int column) {}

    public HandIn {
        answers = List.copyOf(answers);
        places = Map.copyOf(places);
    }

    public Optional<GivenAnswer> answer(int item) {
        return answers.stream().filter(answer -> answer.item() == item).findFirst();
    }
}
