package monochord.practice.skill.ear;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.note.Unreadable;

/** Subjects between which chance decides: {@code P4 or P5}. So a lesson can ask a few things without telling which. */
final class Alternatives {
    private static final Pattern OR = Pattern.compile("\\s+or\\s+");

    private Alternatives() {}

    /** @throws Unreadable if one of them cannot be read, whichever is drawn */
    static <T> T of(String subject, Function<String, T> reader, Chance chance) {
        List<T> read = new ArrayList<>();
        int start = 0;
        Matcher or = OR.matcher(subject);
        while (or.find()) {
            read.add(part(subject, start, or.start(), reader));
            start = or.end();
        }
        read.add(part(subject, start, subject.length(), reader));
        return read.size() == 1 ? read.get(0) : chance.of(read);
    }

    private static <T> T part(String subject, int from, int to, Function<String, T> reader) {
        try {
            return reader.apply(subject.substring(from, to));
        } catch (Unreadable unreadable) {
            throw from == 0 && to == subject.length() ? unreadable : unreadable.within(subject, from);
        }
    }
}
