package monochord.practice.answer;

import java.util.List;
import monochord.harmony.voicing.Voicing;
import monochord.practice.Grade;
import monochord.practice.Judge;
import monochord.practice.Misconception;
import monochord.practice.Mistake;
import monochord.practice.Verdict;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/**
 * Judges a shell: a voicing for two hands of at most {@value #MOST} notes without the perfect fifth. What a shell leaves
 * out: common practice, no source.
 */
public record ShellRubric(Chord chord, VoicingRubric voicing) implements Judge {
    /** The most notes of a shell. */
    public static final int MOST = 4;

    @Override
    public Verdict judge(String answer) {
        Verdict verdict = voicing.judge(answer);
        if (verdict.grade() != Grade.RIGHT) {
            return verdict;
        }
        Voicing given = voicing.read(answer);
        NoteName fifth = chord.root().plus(Interval.PERFECT_FIFTH);
        if (given.pitches().stream().anyMatch(pitch -> pitch.name().equals(fifth))) {
            return nearly(Phrase.sentence("{0} is the fifth, and a shell leaves it out.", fifth));
        }
        return given.pitches().size() > MOST
                ? nearly(Phrase.sentence("For a shell that is too full: four notes are the most."))
                : verdict;
    }

    private Verdict nearly(Phrase message) {
        return Verdict.of(Grade.NEARLY, Misconception.EXTRA_NOTE, message, expected());
    }

    @Override
    public List<Phrase> help(String answer) {
        return voicing.help(answer);
    }

    @Override
    public String expected() {
        return voicing.expected();
    }

    @Override
    public List<Mistake> mistakes() {
        return voicing.mistakes();
    }
}
