package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.motion.VoiceLeading;
import monochord.theory.Chord;
import monochord.theory.note.Beats;
import monochord.theory.note.NoteName;

/** What one change counts where it stands; see {@link Recolour} for the formula. */
final class ChangeScore {
    private final Change change;
    private final PlainRow row;

    private ChangeScore(Change change) {
        this.change = change;
        this.row = change.row();
    }

    /**
     * @param bold whether the restraint that the idiom asks for is left out
     * @param tune what it costs by the tune, see {@link TuneFit#price}
     */
    static int of(Change change, boolean bold, int tune) {
        ChangeScore score = new ChangeScore(change);
        return change.idiom().lift()
                - (bold ? 0 : change.idiom().restraint())
                - RecolourWeights.CHANGE
                + score.leading()
                + score.form()
                - tune;
    }

    private int leading() {
        int line = HalfStepLine.of(change).isPresent() ? RecolourWeights.LINE : 0;
        int bass = bassHalfSteps(sounding()) > bassHalfSteps(plain()) ? RecolourWeights.BASS : 0;
        boolean turnsAboutOne = change.isInsertion() && change.before().equals(change.after());
        int kept = turnsAboutOne ? 0 : RecolourWeights.KEPT * (held(sounding()) - held(plain()));
        return line + bass + Math.max(-RecolourWeights.MOST_KEPT, Math.min(RecolourWeights.MOST_KEPT, kept));
    }

    private List<Chord> sounding() {
        List<Chord> chords = new ArrayList<>();
        change.chords().forEach(event -> chords.add(event.chord()));
        return framed(chords);
    }

    private List<Chord> plain() {
        List<Chord> chords = new ArrayList<>();
        for (int at = change.first(); at <= change.last(); at++) {
            chords.add(row.chord(at));
        }
        return framed(chords);
    }

    private List<Chord> framed(List<Chord> chords) {
        if (change.before() != null) {
            chords.add(0, change.before());
        }
        if (change.after() != null) {
            chords.add(change.after());
        }
        return chords;
    }

    /** The tones held from each chord to the next, on average. */
    private static int held(List<Chord> chords) {
        int held = 0;
        for (int i = 1; i < chords.size(); i++) {
            held += VoiceLeading.commonTones(chords.get(i - 1), chords.get(i)).size();
        }
        return chords.size() < 2 ? 0 : Math.round((float) held / (chords.size() - 1));
    }

    private static int bassHalfSteps(List<Chord> chords) {
        int steps = 0;
        for (int i = 1; i < chords.size(); i++) {
            NoteName from = chords.get(i - 1).bass();
            int up = Math.floorMod(chords.get(i).bass().pitchClass() - from.pitchClass(), 12);
            steps += up == 1 || up == 11 ? 1 : 0;
        }
        return steps;
    }

    private int form() {
        int at = change.changedFrom();
        boolean late = 2 * change.first() >= row.size();
        boolean hurried = change.spans().stream()
                .anyMatch(span ->
                        span.beats().times(row.progression.beatsPerBar()).compareTo(Beats.ONE) < 0);
        return (row.isSecondTime(at) ? RecolourWeights.SECOND_TIME : 0)
                - (row.isFirstTime(at) ? RecolourWeights.FIRST_TIME : 0)
                + (late ? RecolourWeights.LATE : 0)
                - (changesTheStart() ? RecolourWeights.FIRST_CHORD : 0)
                - (hurried ? RecolourWeights.HURRIED : 0);
    }

    /** Whether the row begins with another chord. */
    private boolean changesTheStart() {
        return change.first() == 0 && !change.isInsertion() && !change.now(0).equals(change.old(0));
    }
}
