package monochord.shell.sitting;

import java.util.List;
import monochord.harmony.contrast.Contrast;
import monochord.shell.answer.Answer;
import monochord.shell.answer.CompareAnswer;
import monochord.shell.answer.PlayAnswer;
import monochord.shell.answer.Title;
import monochord.sound.Comparison;
import monochord.sound.Directions;
import monochord.sound.Performance;

/**
 * Versions that are being compared, ready to be heard again.
 *
 * @param takes at least one
 */
public record Contest(List<Take> takes, Directions directions, Comparison comparison) {
    private static final String AGAIN = "compare hears both again, compare first or compare second one of them.";

    public Contest {
        takes = List.copyOf(takes);
    }

    public static Contest of(List<Take> takes, Directions directions) {
        return new Contest(
                takes,
                directions,
                Comparison.of(
                        takes.stream().map(Take::piece).toList(),
                        directions,
                        takes.get(0).key()));
    }

    public Performance performance() {
        return comparison.inTurn();
    }

    /** Lets both be heard and says what differs. */
    public Answer heard(Sitting sitting) {
        boolean idle = sitting.isIdle();
        String remark = play(performance(), idle, sitting);
        String enter = idle ? "Enter or " : "";
        return takes.size() != 2
                ? new PlayAnswer(titles(), directions, remark)
                : new CompareAnswer(
                        titles(),
                        new Contrast(takes.get(0).side(), takes.get(1).side()),
                        takes.get(0).key(),
                        directions.tempo(),
                        enter + AGAIN,
                        remark);
    }

    /** Lets one be heard, as loud as in the comparison. */
    public Answer heard(int side, Sitting sitting) {
        String remark = play(comparison.sides().get(side), sitting.isIdle(), sitting);
        return new PlayAnswer(List.of(takes.get(side).title()), directions, remark);
    }

    /** Lets all be heard, and says no more than what they are. */
    public Answer listened(Sitting sitting) {
        String remark = play(performance(), false, sitting);
        return new PlayAnswer(titles(), directions, remark);
    }

    private List<Title> titles() {
        return takes.stream().map(Take::title).toList();
    }

    private String play(Performance performance, boolean again, Sitting sitting) {
        sitting.stage().remember(this, again);
        return sitting.stage().ear().play(performance);
    }
}
