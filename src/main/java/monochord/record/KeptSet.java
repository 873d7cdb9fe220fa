package monochord.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import monochord.file.OwnerOnly;
import monochord.file.WholeFile;
import monochord.practice.drill.Tally;
import monochord.practice.mastery.SkillInKey;

/**
 * How far the learner is in the day's set, so that one that was cut off goes on, and how the set before went. It is written
 * after each answer; whoever loses the file loses no answer.
 *
 * <p>Text form: a head line, {@code begun TIME ASKED RIGHT ASKED-BEFORE RIGHT-BEFORE}, then {@code ahead SKILL KEY} for each
 * question that is to come. {@link #read} reads all that {@link #write} writes.
 *
 * @param begun in milliseconds since 1970 in UTC
 * @param ahead what is still to be asked
 * @param now how it went so far
 * @param before how the set before went
 */
public record KeptSet(long begun, List<SkillInKey> ahead, Tally now, Tally before) {
    public static final KeptSet NONE = new KeptSet(0, List.of(), Tally.NONE, Tally.NONE);

    private static final String FILE = "set";
    private static final String HEAD = "monochord set 1";
    private static final String BEGUN = "begun";
    private static final String AHEAD = "ahead";
    /** A set that was cut off longer ago is not gone on with: what is due may be something else by then. */
    private static final long LONGEST = 16 * 60 * 60 * 1000L;

    public KeptSet {
        ahead = List.copyOf(ahead);
    }

    /** Whether it was cut off, and is to be gone on with at this time. */
    public boolean isUnderWay(long time) {
        return !ahead.isEmpty() && time >= begun && time - begun <= LONGEST;
    }

    /** The last set that was worked at: this one, unless nothing in it was answered. */
    public Tally last() {
        return now.asked() > 0 ? now : before;
    }

    /** What was kept; nothing if nothing was, or if it cannot be read. */
    public static KeptSet read(Path home) {
        Path file = home.resolve(FILE);
        try {
            return Files.exists(file) ? parse(Files.readAllLines(file)) : NONE;
        } catch (IOException | RuntimeException unreadable) {
            return NONE;
        }
    }

    private static KeptSet parse(List<String> lines) {
        if (lines.size() < 2 || !lines.get(0).equals(HEAD)) {
            return NONE;
        }
        String[] begun = lines.get(1).split(" ");
        List<SkillInKey> ahead = new ArrayList<>();
        for (String line : lines.subList(2, lines.size())) {
            String[] words = line.split(" ", 3);
            ahead.add(new SkillInKey(words[1], words[2]));
        }
        return new KeptSet(Long.parseLong(begun[1]), ahead, tally(begun, 2), tally(begun, 4));
    }

    private static Tally tally(String[] words, int at) {
        return new Tally(Integer.parseInt(words[at]), Integer.parseInt(words[at + 1]));
    }

    /** Puts it in place whole or not at all; where it cannot be written, the set does not go on in the next sitting. */
    public void write(Path home) {
        try {
            OwnerOnly.folder(home);
            WholeFile.writePrivately(home.resolve(FILE), part -> Files.write(part, lines()));
        } catch (IOException unwritable) {
            // the answers themselves are in the record
        }
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>(List.of(
                HEAD,
                String.join(
                        " ",
                        BEGUN,
                        "" + begun,
                        "" + now.asked(),
                        "" + now.right(),
                        "" + before.asked(),
                        "" + before.right())));
        ahead.forEach(item -> lines.add(AHEAD + " " + item.skill() + " " + item.key()));
        return lines;
    }
}
