package monochord.harmony.motion;

import java.util.List;
import java.util.stream.Collectors;

/** Findings in a row that can be proof-read: {@code 1 parallel-fifths 01}, the chord reached, what, which voices. */
final class Marked {
    private Marked() {}

    static String by(Strictness strictness, String passage) {
        return of(strictness.judge(Passage.parse(passage)));
    }

    static String of(List<Finding> findings) {
        return findings.stream().map(Marked::one).collect(Collectors.joining("; "));
    }

    private static String one(Finding finding) {
        String voices = finding.voices().stream().map(String::valueOf).collect(Collectors.joining());
        return (finding.isFault() ? "" : "remark ") + finding.at() + " " + finding.kind() + " " + voices;
    }
}
