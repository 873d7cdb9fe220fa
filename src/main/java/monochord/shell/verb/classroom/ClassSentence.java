package monochord.shell.verb.classroom;

import java.io.IOException;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.classroom.ClassList;
import monochord.classroom.PupilCode;
import monochord.classroom.overview.ClassOverview;
import monochord.classroom.overview.ClassTally;
import monochord.record.ClassRecord;
import monochord.shell.sentence.Sentence;
import monochord.text.Phrase;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/**
 * Of whom and over what a class is wanted: {@code class thursday over 2 weeks}.
 *
 * @param pupil one pupil alone
 * @param group the codes of a group; none for the whole class
 * @param since only what was given since then, in milliseconds since 1970 in UTC
 * @param assignment only what was given for it; empty for all
 * @param over the same in words; nothing for all there is
 */
record ClassSentence(Optional<PupilCode> pupil, Set<String> group, long since, String assignment, Phrase over) {
    static final String OVER = "over";
    private static final Pattern WEEKS = Pattern.compile("(?i)([0-9]{1,3}) weeks?");
    private static final Pattern ONE_WEEK = Pattern.compile("(?i)(?:(?:a|one|last) +)?week");
    private static final Pattern ASSIGNMENT = Pattern.compile("[a-z0-9]+(?:-[a-z0-9]+)*+");
    private static final long WEEK = 7 * 24 * 60 * 60 * 1000L;

    /** @param now in milliseconds since 1970 in UTC */
    static ClassSentence read(Sentence sentence, ClassList list, long now) {
        String body = sentence.body().text();
        Set<String> group = list.group(body);
        Optional<PupilCode> pupil = body.isEmpty() || !group.isEmpty()
                ? Optional.empty()
                : Optional.of(sentence.body().read(PupilCode::parse));
        return sentence.clause(OVER)
                .map(part -> part.read(text -> over(text, pupil, group, now)))
                .orElseGet(() -> new ClassSentence(pupil, group, 0, "", Phrase.NOTHING));
    }

    private static ClassSentence over(String text, Optional<PupilCode> pupil, Set<String> group, long now) {
        Matcher number = WEEKS.matcher(text);
        if (number.matches() || ONE_WEEK.matcher(text).matches()) {
            int weeks = number.matches() ? Integer.parseInt(number.group(1)) : 1;
            Phrase words = Phrase.counted(weeks, "the last week", "the last {0} weeks", weeks);
            return new ClassSentence(pupil, group, now - weeks * WEEK, "", words);
        }
        if (!ASSIGNMENT.matcher(text).matches()) {
            throw Unreadable.because(
                    text,
                    0,
                    "what a class can be seen over",
                    Clause.of("expected an assignment's id, as its file has it, or weeks"),
                    "class over 2 weeks");
        }
        return new ClassSentence(pupil, group, 0, text, Phrase.typed(text));
    }

    ClassOverview overview(ClassRecord record) throws IOException {
        ClassTally tally = new ClassTally();
        record.answers(since, assignment, answer -> {
            boolean isOf = pupil.map(code -> code.text().equals(answer.pupil()))
                    .orElse(group.isEmpty() || group.contains(answer.pupil()));
            if (isOf) {
                tally.add(answer);
            }
        });
        return tally.overview();
    }
}
