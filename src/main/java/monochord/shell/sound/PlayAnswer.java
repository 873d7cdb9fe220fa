package monochord.shell.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.score.Pattern;
import monochord.sound.Directions;
import monochord.sound.Patch;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Signs;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Title;

/**
 * What is being played.
 *
 * @param titles of one thing, or of several one after the other
 * @param directions how it is played
 * @param remark what the sound room has to say, or nothing
 */
public record PlayAnswer(List<Title> titles, Directions directions, String remark) implements Answer {
    public PlayAnswer {
        titles = List.copyOf(titles);
    }

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder();
        int last = titles.size() - 1;
        for (int i = 0; i <= last; i++) {
            text.line((i == 0 ? "Playing " : "then ") + titles.get(i) + (i == last ? manner() + "." : ","));
        }
        if (!remark.isEmpty()) {
            text.line(remark, Style.QUIET);
        }
        return text.build().in(look.signs()).wrapped(look.width());
    }

    /** {@code at 84, broken, swung, 3 times, after a bar of clicks}. */
    private String manner() {
        List<String> said = new ArrayList<>(List.of(" at " + directions.tempo()));
        if (!directions.left().equals(Patch.PIANO) || !directions.right().equals(Patch.PIANO)) {
            said.add("with " + sounds());
        }
        if (directions.pattern() != Pattern.BLOCK) {
            said.add("as " + directions.pattern());
        }
        if (directions.swung()) {
            said.add("swung");
        }
        if (directions.times() > 1) {
            said.add(directions.times() + " times");
        }
        if (directions.countedIn()) {
            said.add("after a count-in");
        }
        return String.join(", ", said);
    }

    private String sounds() {
        return directions.left().equals(directions.right())
                ? directions.right().toString()
                : directions.left() + " on the left and " + directions.right() + " on the right";
    }

    /** Whether there is a sound card is no matter of the music. */
    @Override
    public Optional<Answer> noted() {
        return Optional.of(new PlayAnswer(titles, directions, ""));
    }

    @Override
    public void json(Json json) {
        json.put("kind", "play")
                .put(
                        "titles",
                        titles.stream().map(Title::toString).map(Signs::toAscii).toList())
                .put("tempo", directions.tempo())
                .put("left", directions.left().toString())
                .put("right", directions.right().toString())
                .put("pattern", directions.pattern().toString())
                .put("swing", directions.swung())
                .put("times", directions.times())
                .put("countIn", directions.countedIn())
                .put("remark", remark);
    }
}
