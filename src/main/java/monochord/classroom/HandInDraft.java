package monochord.classroom;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import monochord.classroom.HandIn.GivenAnswer;
import monochord.classroom.HandIn.TypedAnswer;
import monochord.practice.Question;
import monochord.theory.note.NoteNaming;

/** What a pupil has answered so far, to be handed in when it is done. */
public final class HandInDraft {
    private final Assignment assignment;
    private final PupilCode code;
    private final NoteNaming notes;
    private final Map<Question, Integer> items = new IdentityHashMap<>();
    private final List<Question> remaining = new ArrayList<>();
    private final Map<Integer, GivenAnswer> answers = new LinkedHashMap<>();

    /**
     * @param given out, to all alike or to each apart
     * @param notes by what names notes are called in the answers
     * @param before what was answered on an earlier day
     */
    public HandInDraft(Assignment given, PupilCode code, NoteNaming notes, List<GivenAnswer> before) {
        this.assignment = given.forPupil(code);
        this.code = code;
        this.notes = notes;
        before.forEach(answer -> answers.put(answer.item(), answer));
        for (AssignedQuestion asked : assignment.questions()) {
            asked.question()
                    .filter(question -> !answers.containsKey(asked.item()))
                    .ifPresent(question -> {
                        items.put(question, asked.item());
                        remaining.add(question);
                    });
        }
    }

    public Assignment assignment() {
        return assignment;
    }

    public PupilCode code() {
        return code;
    }

    /** The questions that were not answered when it began, each the very one that {@link #add} knows. */
    public List<Question> remaining() {
        return List.copyOf(remaining);
    }

    public int answered() {
        return answers.size();
    }

    public int all() {
        return assignment.questions().size();
    }

    /** Whether a question is one of this assignment. */
    public boolean asks(Question question) {
        return items.containsKey(question);
    }

    /**
     * Takes one more answer to a question.
     *
     * @param help hints that were taken until then
     * @param seconds that it took
     */
    public void add(Question question, String typed, int help, int seconds) {
        int item = items.get(question);
        GivenAnswer before = answers.getOrDefault(item, new GivenAnswer(item, List.of(), 0, 0));
        List<TypedAnswer> tries = new ArrayList<>(before.tries());
        tries.add(new TypedAnswer(typed.strip(), 0, 0));
        answers.put(item, new GivenAnswer(item, tries, help, before.seconds() + seconds));
    }

    /** How many answers to a question were taken. */
    public int tries(Question question) {
        return Optional.ofNullable(answers.get(items.get(question)))
                .map(given -> given.tries().size())
                .orElse(0);
    }

    /** @param given the day, if it is done */
    public HandIn handIn(Optional<LocalDate> given) {
        return new HandIn(
                assignment,
                assignment.digest(),
                Optional.of(code),
                notes,
                given,
                List.copyOf(answers.values()),
                Map.of());
    }
}
