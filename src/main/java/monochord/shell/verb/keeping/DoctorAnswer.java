package monochord.shell.verb.keeping;

import java.util.List;
import java.util.Optional;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Table;

/** What was found, a row each, and below it what to do. */
record DoctorAnswer(List<DoctorFinding> findings) implements Answer {
    @Override
    public StyledText text(Look look) {
        Table table = Table.of(2);
        findings.forEach(finding -> table.row(
                finding.what(),
                finding.isWell() ? finding.state() : finding.state().styled(Style.STRONG)));
        StyledText.Builder text = StyledText.builder(look.reader());
        List<Phrase> advice = findings.stream()
                .map(DoctorFinding::advice)
                .filter(phrase -> !phrase.isEmpty())
                .toList();
        advice.forEach(text::line);
        if (isWell()) {
            text.line(Phrase.sentence("All is well."));
        }
        return table.text(look).plus(text.build().wrapped(look.width()));
    }

    private boolean isWell() {
        return findings.stream().allMatch(DoctorFinding::isWell);
    }

    @Override
    public void json(Json json) {
        json.put("kind", "doctor")
                .objects(
                        "findings",
                        findings,
                        (row, finding) -> row.put("what", finding.key())
                                .put("state", finding.state().toString())
                                .put("well", finding.isWell())
                                .put(
                                        "advice",
                                        finding.advice().isEmpty()
                                                ? null
                                                : finding.advice().toString()))
                .objects(
                        "checks",
                        findings,
                        (row, finding) -> row.put("what", finding.key())
                                .put("state", finding.health().toString())
                                .put("message", finding.state().toString()));
    }

    @Override
    public int status() {
        return isWell() ? DONE : NO;
    }

    @Override
    public Optional<Answer> noted() {
        return Optional.empty();
    }
}
