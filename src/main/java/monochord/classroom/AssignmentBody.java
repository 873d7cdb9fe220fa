package monochord.classroom;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import monochord.classroom.HandIn.GivenAnswer;
import monochord.lesson.LessonPart.Ask;
import monochord.lesson.read.AskText;
import monochord.lesson.read.Faults;
import monochord.lesson.read.Field;
import monochord.lesson.read.SourceLine;
import monochord.text.Phrase;

/** What stands below the head: the teacher's words, then the questions, and what was written under each. */
final class AssignmentBody {
    /** Three back quotes, or what an editor makes of them. */
    private static final Pattern FENCE = Pattern.compile("\\s*[`~\u00b4\u2018\u2019']{3,}\\s*(?:ask)?\\s*");

    private static final String ASK = "ask";

    /** A heading with nothing in it but a number, or a word and a number. */
    private static final Pattern HEADING = Pattern.compile("\\s*#{1,6}\\s*(?:\\p{L}+\\s*)?[0-9]{1,3}[.):]?\\s*");

    private static final int MOST_QUESTIONS = 500;

    private final Faults faults;
    private final List<SourceLine> words = new ArrayList<>();
    private final List<Ask> draws = new ArrayList<>();
    private final List<QuestionSlot> slots = new ArrayList<>();
    private final Map<Integer, AssignedQuestion> questions = new LinkedHashMap<>();
    private final Map<Integer, Integer> places = new LinkedHashMap<>();
    private List<GivenAnswer> answers = List.of();

    private AssignmentBody(Faults faults) {
        this.faults = faults;
    }

    static AssignmentBody read(List<SourceLine> lines, Faults faults) {
        AssignmentBody body = new AssignmentBody(faults);
        int at = 0;
        while (at < lines.size()) {
            at = body.take(lines, at);
        }
        body.finish();
        return body;
    }

    /** @return index of the line that comes next */
    private int take(List<SourceLine> lines, int at) {
        SourceLine line = lines.get(at);
        if (opens(line)) {
            return block(lines, at);
        }
        if (HEADING.matcher(line.text()).matches()) {
            slots.add(new QuestionSlot());
        } else if (slots.isEmpty()) {
            words.add(line);
        } else {
            slots.get(slots.size() - 1).add(line);
        }
        return at + 1;
    }

    private static boolean opens(SourceLine line) {
        return line.text().contains(ASK) && FENCE.matcher(line.text()).matches();
    }

    private int block(List<SourceLine> lines, int at) {
        int end = at + 1;
        while (end < lines.size() && Field.looksLike(lines.get(end))) {
            end++;
        }
        SourceLine fence = lines.get(at);
        List<SourceLine> inside = lines.subList(at + 1, end);
        QuestionSlot slot = slotFor();
        if (QuestionText.isOne(inside)) {
            slot.begin(fence, QuestionText.read(fence, inside, faults));
        } else {
            slot.begin(fence, Optional.empty());
            AskText.read(fence.number(), inside, faults).ifPresent(draws::add);
        }
        boolean closed = end < lines.size()
                && !opens(lines.get(end))
                && FENCE.matcher(lines.get(end).text()).matches();
        return closed ? end + 1 : end;
    }

    /** The one whose heading has just been read, or another. */
    private QuestionSlot slotFor() {
        if (slots.isEmpty() || slots.get(slots.size() - 1).isBegun()) {
            slots.add(new QuestionSlot());
        }
        return slots.get(slots.size() - 1);
    }

    private void finish() {
        for (QuestionSlot slot : slots) {
            slot.question().ifPresent(question -> put(slot, question));
        }
        answers = new WrittenAnswers(questions.keySet(), faults).of(slots);
    }

    private void put(QuestionSlot slot, AssignedQuestion question) {
        if (questions.size() == MOST_QUESTIONS) {
            faults.at(
                    slot.line(),
                    1,
                    Phrase.of("more than {0} questions", MOST_QUESTIONS),
                    Phrase.of("make two assignments of it"));
        } else if (questions.putIfAbsent(question.item(), question) != null) {
            faults.at(
                    slot.line(),
                    1,
                    Phrase.of("question {0} stands in it twice", question.item()),
                    Phrase.of("leave one out"));
        } else {
            places.put(question.item(), slot.line());
        }
    }

    String words() {
        return words.stream()
                .map(SourceLine::text)
                .collect(Collectors.joining("\n"))
                .strip();
    }

    List<Ask> draws() {
        return draws;
    }

    List<AssignedQuestion> questions() {
        return List.copyOf(questions.values());
    }

    List<GivenAnswer> answers() {
        return answers;
    }

    /** On which line each question stands, by its number. */
    Map<Integer, Integer> places() {
        return places;
    }
}
