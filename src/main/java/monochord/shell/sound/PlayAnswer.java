package monochord.shell.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.score.Pattern;
import monochord.sound.Directions;
import monochord.sound.Patch;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.note.Signs;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * What is being played.
 *
 * @param titles of one thing, or of several one after the other
 * @param directions how it is played
 * @param remark what the sound room has to say; empty for nothing
 */
public record PlayAnswer(List<Phrase> titles, Directions directions, Phrase remark) implements Answer {
    public PlayAnswer {
        titles = List.copyOf(titles);
    }

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        int last = titles.size() - 1;
        for (int i = 0; i < last; i++) {
            Phrase title = titles.get(i);
            text.line(i == 0 ? Phrase.of("Playing {0},", title) : Phrase.of("then {0},", title));
        }
        Phrase title = titles.get(last);
        text.line(last == 0 ? Phrase.of("Playing {0} {1}.", title, how()) : Phrase.of("then {0} {1}.", title, how()));
        if (!remark.isEmpty()) {
            text.line(remark, Style.QUIET);
        }
        return text.build().wrapped(look.width());
    }

    /** {@code at 84, as broken, swung, 3 times, after a count-in}. */
    private Phrase how() {
        List<Phrase> said = new ArrayList<>(List.of(Phrase.of("at {0}", directions.tempo())));
        if (!directions.left().equals(Patch.PIANO) || !directions.right().equals(Patch.PIANO)) {
            said.add(sounds());
        }
        if (directions.pattern() != Pattern.BLOCK) {
            said.add(Phrase.of("as {0}", Phrase.verb(directions.pattern().toString())));
        }
        if (directions.swung()) {
            said.add(Phrase.of("swung"));
        }
        if (directions.times() > 1) {
            said.add(Phrase.of("{0} times", directions.times()));
        }
        if (directions.countedIn()) {
            said.add(Phrase.of("after a count-in"));
        }
        return Phrase.joined(", ", said);
    }

    private Phrase sounds() {
        Phrase right = Phrase.typed(directions.right().toString());
        return directions.left().equals(directions.right())
                ? Phrase.of("with {0}", right)
                : Phrase.of(
                        "with {0} on the left and {1} on the right",
                        Phrase.typed(directions.left().toString()), right);
    }

    /** Whether there is a sound card is no matter of the music. */
    @Override
    public Optional<Answer> noted() {
        return Optional.of(new PlayAnswer(titles, directions, Phrase.NOTHING));
    }

    @Override
    public void json(Json json) {
        json.put("kind", "play")
                .put(
                        "titles",
                        titles.stream()
                                .map(Phrase::toString)
                                .map(Signs::toAscii)
                                .toList())
                .put("tempo", directions.tempo())
                .put("left", directions.left().toString())
                .put("right", directions.right().toString())
                .put("pattern", directions.pattern().toString())
                .put("swing", directions.swung())
                .put("times", directions.times())
                .put("countIn", directions.countedIn())
                .put("remark", remark.toString());
    }
}
