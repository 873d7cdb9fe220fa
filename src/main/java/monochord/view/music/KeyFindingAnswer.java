package monochord.view.music;

import java.util.List;
import java.util.Optional;
import monochord.harmony.Progression;
import monochord.harmony.key.KeyFinding;
import monochord.harmony.key.KeySpan;
import monochord.harmony.key.LikelyKey;
import monochord.harmony.key.Loop;
import monochord.harmony.key.TuneKeySpan;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * The key that music stands in, with what speaks for it; the next likely one where it is in doubt; where it changes; and
 * how a loop leads back.
 *
 * @param chords the chords it was found from, if there were any
 * @param remarks what is to be known about how the music was read
 */
public record KeyFindingAnswer(KeyFinding finding, Optional<Progression> chords, List<Phrase> remarks)
        implements Answer {
    private static final String ITEM = "   - ";
    private static final double SURE = 0.9;
    private static final double LIKELY = 0.6;
    private static final double NEARLY = 0.5;
    private static final double POSSIBLE = 0.25;

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        remarks.forEach(remark -> text.line(remark, Style.QUIET));
        if (finding.spans().size() > 1) {
            spans(text);
        } else if (finding.ofTune().size() > 1) {
            spansOfTune(text);
        } else {
            key(first(), finding.keys().get(0), text);
            LikelyKey next = finding.keys().get(1);
            second(next).ifPresent(heading -> key(heading, next, text));
        }
        finding.loop().ifPresent(loop -> loop(loop, text));
        return text.build().wrapped(look.width());
    }

    private Phrase first() {
        double share = finding.keys().get(0).share();
        Key key = finding.key();
        return share >= SURE
                ? Phrase.of("In {0}", key)
                : share >= LIKELY
                        ? Phrase.of("Most likely in {0}", key)
                        : Phrase.of("In doubt; the likeliest is {0}", key);
    }

    private Optional<Phrase> second(LikelyKey next) {
        double beside = next.share() / finding.keys().get(0).share();
        return beside >= NEARLY
                ? Optional.of(Phrase.of("Nearly as likely in {0}", next.key()))
                : beside >= POSSIBLE ? Optional.of(Phrase.of("Less likely in {0}", next.key())) : Optional.empty();
    }

    private void key(Phrase heading, LikelyKey likely, StyledText.Builder text) {
        text.line(heading, Style.HEADING);
        chords.ifPresent(row -> text.line(Phrase.row(numerals(row.chords(), likely.key())), Style.STRONG));
        likely.why().forEach(sentence -> text.add(ITEM).add(sentence).end());
    }

    private static List<Numeral> numerals(List<Chord> row, Key key) {
        return row.stream().map(chord -> Numeral.of(chord, key)).toList();
    }

    private void spans(StyledText.Builder text) {
        text.line(Phrase.of("It changes key"), Style.HEADING);
        List<Chord> row = chords.orElseThrow().chords();
        for (KeySpan span : finding.spans()) {
            List<Chord> part = row.subList(span.from(), span.to() + 1);
            text.line(Phrase.of("{0}: {1}", span.key(), Phrase.row(part)).styled(Style.STRONG));
            text.add(ITEM).add(Phrase.row(numerals(part, span.key()))).end();
            if (span.from() > 0) {
                text.add(ITEM).add(way(span)).end();
            }
        }
    }

    private Phrase way(KeySpan span) {
        Key before = finding.spans().get(finding.spans().indexOf(span) - 1).key();
        return span.pivot()
                .map(pivot -> Phrase.sentence(
                        "{0} belongs to both: {1} in {2}, {3} in {4}.",
                        pivot, Numeral.of(pivot, before), before, Numeral.of(pivot, span.key()), span.key()))
                .orElseGet(() -> Phrase.sentence("A direct change: no chord between belongs to both keys."));
    }

    private void spansOfTune(StyledText.Builder text) {
        text.line(Phrase.of("It changes key"), Style.HEADING);
        TuneKeySpan before = null;
        for (TuneKeySpan span : finding.ofTune()) {
            text.line(where(span).styled(Style.STRONG));
            if (before != null) {
                text.add(ITEM).add(hinge(before, span)).end();
            }
            before = span;
        }
    }

    private static Phrase where(TuneKeySpan span) {
        return span.bars()
                .map(bars -> bars.first() == bars.last()
                        ? Phrase.of("{0}: bar {1}", span.key(), bars.first())
                        : Phrase.of("{0}: bars {1} to {2}", span.key(), Math.max(1, bars.first()), bars.last()))
                .orElseGet(() -> Phrase.of("{0}: notes {1} to {2}", span.key(), span.from() + 1, span.to() + 1));
    }

    private static Phrase hinge(TuneKeySpan before, TuneKeySpan span) {
        return span.pivot()
                .map(pivot -> Phrase.sentence(
                        "{0} fits just before and belongs to both: {1} in {2}, {3} in {4}.",
                        pivot,
                        Numeral.of(pivot, before.key()),
                        before.key(),
                        Numeral.of(pivot, span.key()),
                        span.key()))
                .orElseGet(() -> Phrase.sentence("A direct change: no plain chord of both keys fits just before."));
    }

    private static void loop(Loop loop, StyledText.Builder text) {
        text.line(Phrase.sentence("It can go round and round. {0}", loop.lead()));
        loop.schema().ifPresent(name -> text.line(Phrase.sentence("Textbooks call this loop {0}.", name)));
        text.line(loop.ending());
    }

    @Override
    public void json(Json json) {
        json.put("kind", "keys")
                .objects(
                        "keys",
                        finding.keys(),
                        (object, likely) -> object.put("key", likely.key().toString())
                                .put("share", rounded(likely.share()))
                                .put("why", likely.why()))
                .objects(
                        "spans",
                        finding.spans(),
                        (object, span) -> object.put("from", span.from())
                                .put("to", span.to())
                                .put("key", span.key().toString())
                                .put("pivot", span.pivot().map(Chord::toString).orElse(null)));
        tuneSpans(json);
        json.put("loop", finding.loop().isPresent())
                .put("lead", finding.loop().map(loop -> loop.lead().toString()).orElse(null))
                .put(
                        "schema",
                        finding.loop()
                                .flatMap(Loop::schema)
                                .map(Phrase::toString)
                                .orElse(null))
                .put(
                        "ending",
                        finding.loop().map(loop -> loop.ending().toString()).orElse(null))
                .put("remarks", remarks);
    }

    private void tuneSpans(Json json) {
        json.objects(
                "tuneSpans",
                finding.ofTune(),
                (object, span) -> object.put("from", span.from())
                        .put("to", span.to())
                        .put("key", span.key().toString())
                        .put("pivot", span.pivot().map(Chord::toString).orElse(null)));
    }

    private static double rounded(double share) {
        return Math.round(share * 1000) / 1000.0;
    }
}
