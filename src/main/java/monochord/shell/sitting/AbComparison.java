package monochord.shell.sitting;

import java.util.List;
import monochord.harmony.contrast.Contrast;
import monochord.shell.playback.Playable;
import monochord.shell.sound.CompareAnswer;
import monochord.shell.sound.PlayAnswer;
import monochord.sound.Comparison;
import monochord.sound.Directions;
import monochord.sound.Performance;
import monochord.text.Phrase;
import monochord.view.Answer;

/** Versions that are being compared. How loud each has to be is measured once, when they are first to be heard. */
public final class AbComparison {

    private final List<Playable> takes;
    private final Directions directions;
    private Comparison comparison;

    /** @param takes at least one */
    public AbComparison(List<Playable> takes, Directions directions) {
        this.takes = List.copyOf(takes);
        this.directions = directions;
    }

    public List<Playable> takes() {
        return takes;
    }

    public Directions directions() {
        return directions;
    }

    private Comparison comparison() {
        if (comparison == null) {
            comparison = Comparison.of(
                    takes.stream().map(Playable::piece).toList(),
                    directions,
                    takes.get(0).key());
        }
        return comparison;
    }

    /** One after the other. */
    public Performance performance() {
        return comparison().inTurn();
    }

    /** One of them, from 0, as loud as beside the others. */
    public Performance performance(int side) {
        return comparison().sides().get(side);
    }

    /** Lets both be heard and says what differs. */
    public Answer heard(Sitting sitting) {
        if (takes.size() != 2) {
            return listened(sitting);
        }
        sitting.stage().remember(this);
        return new CompareAnswer(
                titles(),
                new Contrast(takes.get(0).side(), takes.get(1).side()),
                takes.get(0).key(),
                directions.tempo(),
                Phrase.of("compare hears both again, compare first or compare second one of them."),
                sitting.stage().ear().play(this::performance));
    }

    /** Lets one be heard, as loud as in the comparison. */
    public Answer heard(int side, Sitting sitting) {
        sitting.stage().remember(this);
        Phrase remark = sitting.stage().ear().play(() -> performance(side));
        return new PlayAnswer(List.of(takes.get(side).title()), directions, remark);
    }

    /** Lets all be heard, and says no more than what they are. */
    public Answer listened(Sitting sitting) {
        sitting.stage().remember(this);
        return new PlayAnswer(titles(), directions, sitting.stage().ear().play(this::performance));
    }

    private List<Phrase> titles() {
        return takes.stream().map(Playable::title).toList();
    }
}
