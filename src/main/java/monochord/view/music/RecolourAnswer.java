package monochord.view.music;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.colour.Idea;
import monochord.harmony.colour.Reason;
import monochord.harmony.colour.Recolour;
import monochord.harmony.melody.FitNote;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.note.Beats;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * Ideas for colouring a progression, and the best of them together.
 *
 * @param remarks what is to be known about how the chords and the tune were read
 */
public record RecolourAnswer(Recolour recolour, List<Phrase> remarks) implements Answer {
    private static final String ITEM = "   - ";
    private static final int SHOWN = 6;
    private static final int PER_PLACE = 2;
    private static final int IN_JSON = 200;

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        remarks.forEach(remark -> text.line(remark, Style.QUIET));
        text.line(Phrase.of("In {0}", recolour.progression().key()), Style.HEADING);
        text.line(Phrase.row(recolour.progression().symbols()), Style.STRONG);
        List<Idea> shown = shown();
        if (shown.isEmpty()) {
            text.line(Phrase.sentence("No change here would sound better than what you have."));
        }
        for (int i = 0; i < shown.size(); i++) {
            idea(i + 1, shown.get(i), text);
        }
        together(text);
        text.line(
                Phrase.sentence(
                        "Advice from custom, for your ear to decide. Agree each changed chord with the band first."),
                Style.QUIET);
        return text.build().wrapped(look.width());
    }

    /** The best ideas that make it better, no more than two for one chord. */
    private List<Idea> shown() {
        List<Idea> shown = new ArrayList<>();
        for (Idea idea : recolour.ideas()) {
            long there = shown.stream().filter(one -> one.at() == idea.at()).count();
            if (idea.score() > 0 && there < PER_PLACE && shown.size() < SHOWN) {
                shown.add(idea);
            }
        }
        return shown;
    }

    private static void idea(int number, Idea idea, StyledText.Builder text) {
        Phrase to = Phrase.of("{0}", idea.to()).styled(Style.STRONG);
        Phrase kind = Phrase.of("{0}, score {1}", idea.colour().inWords(), idea.score());
        text.line(Phrase.of(
                "{0}. {1} for {2}, chord {3}  {4} → {5}  {6}",
                number,
                to,
                idea.from(),
                idea.at() + 1,
                idea.fromNumeral(),
                idea.toNumeral(),
                kind.styled(Style.QUIET)));
        idea.reasons().forEach(reason -> text.add(ITEM).add(reason.sentence()).end());
        if (!idea.clashes().isEmpty()) {
            List<Phrase> changes = idea.clashes().stream()
                    .map(RecolourAnswer::change)
                    .distinct()
                    .toList();
            text.add(ITEM)
                    .add(Phrase.sentence("In the tune: {0}.", Phrase.joined(", ", changes)))
                    .end();
        }
    }

    private static Phrase change(FitNote clash) {
        return clash.change()
                .map(change -> Phrase.of("{0} becomes {1}", clash.pitch(), change.to()))
                .orElseGet(() -> Phrase.of("{0} has nothing near that fits", clash.pitch()));
    }

    private void together(StyledText.Builder text) {
        if (recolour.combined().isEmpty()) {
            return;
        }
        text.line(Phrase.of("Best together, score {0}:", recolour.gain()), Style.HEADING)
                .line(Phrase.row(recolour.best().symbols()), Style.STRONG)
                .line(Phrase.row(recolour.best().numerals()))
                .line(Phrase.of("play lets you hear it."), Style.QUIET);
    }

    @Override
    public void json(Json json) {
        List<Idea> ideas = recolour.ideas();
        json.put("key", recolour.progression().key().toString())
                .objects("ideas", ideas.subList(0, Math.min(IN_JSON, ideas.size())), this::json)
                .put("best", recolour.best().chords())
                .put("bestNumerals", bestNumerals())
                .put("gain", recolour.gain())
                .put("remarks", remarks);
    }

    private List<String> bestNumerals() {
        return recolour.best().slots().stream()
                .filter(slot -> !slot.held())
                .map(slot -> slot.numeral().toString())
                .toList();
    }

    private void json(Json object, Idea idea) {
        object.put("at", idea.at())
                .put("from", idea.fromNumeral().toString())
                .put("to", idea.toNumeral().toString())
                .put("symbol", idea.to().toString())
                .put("colour", idea.colour().toString())
                .put("score", idea.score())
                .put("reasons", idea.reasons().stream().map(Reason::sentence).toList())
                .objects("changes", idea.clashes(), this::json);
    }

    private void json(Json object, FitNote clash) {
        Beats pickup = recolour.melody().orElseThrow().pickup();
        object.put("at", clash.note())
                .put("beat", number(clash.start()) - number(pickup))
                .put("from", clash.pitch().toString())
                .put("to", clash.change().map(change -> change.to().toString()).orElse(null));
    }

    private static double number(Beats beats) {
        return (double) beats.numerator() / beats.denominator();
    }
}
