package monochord.classroom;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.classroom.HandIn.GivenAnswer;
import monochord.classroom.HandIn.TypedAnswer;
import monochord.lesson.read.Faults;
import monochord.lesson.read.SourceLine;
import monochord.text.Phrase;

/**
 * Finds the answers among what was written under the questions. An answer stands behind {@code Answer:}, or by itself; one
 * that begins with the number of another question belongs to that one.
 */
final class WrittenAnswers {
    /** What an editor or a writer puts in front of a line. */
    private static final String MARKS = "(?:[\\s>]|[*\u2022-]\\s)*";

    private static final Pattern LABEL = Pattern.compile(
            "(?i)" + MARKS + "[*_]{0,2}(answer|antwort|help|took|verdict)[*_]{0,2}\\s*:[*_]{0,2}\\s*(.*)");
    private static final Pattern NUMBERED = Pattern.compile("([0-9]{1,3})\\s*[.):]\\s+(?=\\S)");
    private static final Pattern MARKED = Pattern.compile(MARKS);
    private static final Pattern FIGURES = Pattern.compile("[0-9]{1,6}");

    private final Set<Integer> items;
    private final Faults faults;
    private final Map<Integer, AnswerDraft> drafts = new LinkedHashMap<>();
    private AnswerDraft open;

    /** The answers to one question so far. */
    private static final class AnswerDraft {
        private final List<TypedAnswer> tries = new ArrayList<>();
        private boolean fromElsewhere;
        private int help;
        private int seconds;

        void add(SourceLine line, int place) {
            tries.add(new TypedAnswer(line.text().substring(place).strip(), line.number(), line.column(place)));
        }

        void goOn(SourceLine line) {
            TypedAnswer last = tries.remove(tries.size() - 1);
            tries.add(new TypedAnswer(last.text() + " " + line.text().strip(), last.line(), last.column()));
        }
    }

    /** @param items the numbers of all questions */
    WrittenAnswers(Set<Integer> items, Faults faults) {
        this.items = items;
        this.faults = faults;
    }

    static boolean isLabelled(SourceLine line) {
        return line.text().indexOf(':') >= 0 && LABEL.matcher(line.text()).matches();
    }

    /** One for each question that was answered, in the order in which their answers come. */
    List<GivenAnswer> of(List<QuestionSlot> slots) {
        for (QuestionSlot slot : slots) {
            open = null;
            slot.question().ifPresent(question -> slot.written().forEach(line -> take(question.item(), line)));
        }
        List<GivenAnswer> answers = new ArrayList<>();
        drafts.forEach((item, draft) -> {
            if (!draft.tries.isEmpty() || draft.help > 0) {
                answers.add(new GivenAnswer(item, draft.tries, draft.help, draft.seconds));
            }
        });
        return answers;
    }

    private AnswerDraft draft(int item) {
        return drafts.computeIfAbsent(item, its -> new AnswerDraft());
    }

    private void take(int own, SourceLine line) {
        if (line.isBlank()) {
            open = null;
            return;
        }
        Matcher label = LABEL.matcher(line.text());
        if (line.text().indexOf(':') < 0 || !label.matches()) {
            plain(own, line);
            return;
        }
        open = null;
        switch (label.group(1).toLowerCase(Locale.ROOT)) {
            case "help" -> draft(own).help = number(label.group(2));
            case "took" -> draft(own).seconds = number(label.group(2));
            case "verdict" -> {} // only the engine says what is right
            default -> answer(own, line, label.start(2));
        }
    }

    private void answer(int own, SourceLine line, int place) {
        if (place < line.text().length()) {
            put(own, own, line, place);
        }
    }

    private void plain(int own, SourceLine line) {
        Matcher marks = MARKED.matcher(line.text());
        int place = marks.lookingAt() ? marks.end() : 0;
        Matcher numbered =
                NUMBERED.matcher(line.text()).region(place, line.text().length());
        if (place == line.text().length()) {
            return;
        }
        if (numbered.lookingAt() && items.contains(Integer.parseInt(numbered.group(1)))) {
            put(Integer.parseInt(numbered.group(1)), own, line, numbered.end());
        } else if (open != null) {
            open.goOn(line);
        } else {
            put(own, own, line, place);
        }
    }

    /** @param own the question under which it stands */
    private void put(int item, int own, SourceLine line, int place) {
        AnswerDraft draft = draft(item);
        boolean isElsewhere = item != own;
        if (!draft.tries.isEmpty() && (isElsewhere || draft.fromElsewhere)) {
            faults.at(
                    line.number(),
                    line.column(place),
                    Phrase.of(
                            "question {0} is answered here and on line {1}",
                            item, draft.tries.get(0).line()),
                    Phrase.of("leave one answer"));
        }
        draft.fromElsewhere |= isElsewhere;
        draft.add(line, place);
        open = draft;
    }

    private static int number(String text) {
        Matcher figures = FIGURES.matcher(text);
        return figures.find() ? Integer.parseInt(figures.group()) : 0;
    }
}
