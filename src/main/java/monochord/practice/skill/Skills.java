package monochord.practice.skill;

import java.util.List;
import java.util.Optional;
import monochord.practice.Skill;

/** Every skill that can be asked, in the order in which they are learned. */
public final class Skills {
    private static final List<Skill> ALL = List.of(
            new Steps(),
            new ScaleSpelling(),
            new KeySignature(),
            new Intervals(),
            new TriadSpelling(),
            new DegreeQuality(),
            new DegreeChord(),
            new ChordDegree(),
            new LoweredDegree(),
            new BorrowedChord(),
            new BorrowedSource(),
            new ProgressionInKey(),
            new ProgressionNumbers(),
            new Voicings());

    private Skills() {}

    public static List<Skill> all() {
        return ALL;
    }

    public static Optional<Skill> find(String id) {
        return ALL.stream().filter(skill -> skill.id().equals(id)).findFirst();
    }
}
