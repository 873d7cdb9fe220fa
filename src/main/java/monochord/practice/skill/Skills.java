package monochord.practice.skill;

import java.util.List;
import java.util.Optional;
import monochord.practice.Skill;
import monochord.practice.skill.chord.AddedTone;
import monochord.practice.skill.chord.AppliedDominant;
import monochord.practice.skill.chord.Inversion;
import monochord.practice.skill.chord.SeventhSpelling;
import monochord.practice.skill.chord.Suspension;
import monochord.practice.skill.ear.EarInterval;
import monochord.practice.skill.ear.EarProgression;
import monochord.practice.skill.ear.EarQuality;
import monochord.practice.skill.transition.NextChord;
import monochord.practice.skill.transition.TransposingChords;

/** Every skill that can be asked, in the order in which they are learned. */
public final class Skills {
    private static final List<Skill> ALL = List.of(
            new Steps(),
            new ScaleSpelling(),
            new KeySignature(),
            new Intervals(),
            new TriadSpelling(),
            new SeventhSpelling(),
            new Inversion(),
            new Suspension(),
            new AddedTone(),
            new DegreeQuality(),
            new DegreeChord(),
            new ChordDegree(),
            new LoweredDegree(),
            new BorrowedChord(),
            new BorrowedSource(),
            new AppliedDominant(),
            new ProgressionInKey(),
            new ProgressionNumbers(),
            new TransposingChords(),
            new MelodyFit(),
            new NextChord(),
            new CommonTones(),
            new OuterMotion(),
            new Voicings(),
            new EarInterval(),
            new EarQuality(),
            new EarProgression());

    private Skills() {}

    public static List<Skill> all() {
        return ALL;
    }

    public static Optional<Skill> find(String id) {
        return ALL.stream().filter(skill -> skill.id().equals(id)).findFirst();
    }
}
