package monochord.view.advice;

import java.util.List;
import java.util.Optional;
import monochord.harmony.ChordEvent;
import monochord.harmony.colour.Idea;
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
 * The one change to begin with, and where else one could go; or the best combination of changes.
 *
 * @param isMore whether the combination is shown, not the one change
 * @param remarks what is to be known about how the chords and the tune were read
 */
public record RecolourAnswer(Recolour recolour, boolean isMore, List<Phrase> remarks) implements Answer {
    private static final int ELSEWHERE = 3;
    private static final int IN_JSON = 200;

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        remarks.forEach(remark -> text.line(remark, Style.QUIET));
        text.line(heading(), Style.HEADING);
        StyledText head = text.build().wrapped(look.width());
        Optional<Idea> change = recolour.change();
        if (change.isEmpty()) {
            return head.plus(nothing(look));
        }
        return head.plus(isMore ? new CombinationText(recolour).text(look) : one(change.get(), look))
                .plus(end(look));
    }

    private Phrase heading() {
        return recolour.isLoop()
                ? Phrase.of(
                        "In {0}, {1} leading back to {2}",
                        recolour.progression().key(),
                        chord(recolour.progression().chords().size() - 1),
                        chord(0))
                : Phrase.of("In {0}", recolour.progression().key());
    }

    private Phrase chord(int at) {
        return Phrase.of("{0}", recolour.progression().chords().get(at));
    }

    private StyledText nothing(Look look) {
        return StyledText.builder(look.reader())
                .line(Phrase.row(recolour.progression().symbols()), Style.STRONG)
                .line(Phrase.sentence("No change here would sound better than what you have."))
                .build()
                .wrapped(look.width());
    }

    private StyledText one(Idea change, Look look) {
        StyledText.Builder reasons = StyledText.builder(look.reader());
        change.reasons().forEach(reasons::line);
        IdeaText.tune(change).ifPresent(reasons::line);
        StyledText shown = new IdeaText(change)
                .rows(look)
                .plus(reasons.build().wrapped(look.width()))
                .plus(new IdeaText(change).keyboards(look));
        return shown.plus(TuneOverlay.text(recolour, change, look)).plus(elsewhere(look));
    }

    private StyledText elsewhere(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        List<Idea> others = recolour.elsewhere(ELSEWHERE);
        if (!others.isEmpty()) {
            text.gap().line(Phrase.of("Elsewhere:"), Style.HEADING);
        }
        others.forEach(idea -> text.line(IdeaText.inOneLine(idea)));
        return text.build().wrapped(look.width());
    }

    private StyledText end(Look look) {
        return StyledText.builder(look.reader())
                .line(
                        IdeaText.WHAT_NEXT.then(
                                isMore
                                        ? Phrase.NOTHING
                                        : Phrase.sentence(
                                                "With {0} or {1} behind it, it goes further.",
                                                Phrase.verb("more"), Phrase.verb("bold"))),
                        Style.QUIET)
                .line(
                        Phrase.sentence("Advice for your ear to decide. Agree each changed chord with the band first."),
                        Style.QUIET)
                .build()
                .wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        List<Idea> ideas = recolour.ideas();
        List<Idea> told = ideas.subList(0, Math.min(IN_JSON, ideas.size()));
        json.put("kind", "recolour")
                .put("key", recolour.progression().key().toString())
                .objects("ideas", told, this::json);
        recolour.change()
                .ifPresentOrElse(
                        one -> json.put("default", told.indexOf(one)), () -> json.put("default", (String) null));
        json.put("best", recolour.best().chords())
                .put("bestNumerals", IdeaText.numerals(recolour.best()))
                .put("gain", recolour.gain())
                .put("remarks", remarks);
    }

    private void json(Json object, Idea idea) {
        object.put("at", idea.first())
                .put("first", idea.first())
                .put("last", idea.last())
                .put("from", row(idea.from()))
                .put("to", row(idea.to()))
                .put("symbol", symbols(idea.to()))
                .put("idiom", idea.name())
                .put("colour", idea.colour().toString())
                .put("score", idea.score())
                .put("symbols", idea.progression().chords())
                .put("reasons", idea.reasons())
                .objects("changes", idea.clashes(), this::json);
    }

    private static String symbols(List<ChordEvent> events) {
        return String.join(
                " ", events.stream().map(event -> event.chord().toString()).toList());
    }

    private static String row(List<ChordEvent> events) {
        return String.join(
                " ", events.stream().map(event -> event.numeral().toString()).toList());
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
