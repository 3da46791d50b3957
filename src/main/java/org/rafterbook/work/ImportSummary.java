package org.rafterbook.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import org.rafterbook.exchange.ImportProblem;
import org.rafterbook.units.Counted;

/**
 * What an import adds.
 *
 * @param flights flights added
 * @param alreadyThere flights of the files that the logbook had
 * @param added how many of other things, keyed by their word in the plural ("versions")
 * @param remarks sentences on what was not taken over and why
 * @param problems what is wrong; where this is not empty nothing was kept
 * @param doubts figures that are taken in but hardly meant
 */
public record ImportSummary(
        int flights,
        int alreadyThere,
        Map<String, Integer> added,
        List<String> remarks,
        List<ImportProblem> problems,
        List<ImportDoubt> doubts) {

    public ImportSummary {
        remarks = List.copyOf(remarks);
        problems = List.copyOf(problems);
        doubts = List.copyOf(doubts);
    }

    /** True where the logbook has everything already. */
    public boolean addsNothing() {
        return flights == 0 && added.values().stream().allMatch(n -> n == 0);
    }

    /** In words, one sentence a line. */
    public List<String> lines() {
        return lines("Added: ");
    }

    /** The same while it is only looked at. */
    public List<String> ahead() {
        return lines("Would be added: ");
    }

    private List<String> lines(String lead) {
        List<String> lines = new ArrayList<>();
        if (addsNothing()) {
            lines.add(
                    alreadyThere == 0
                            ? "Nothing was added."
                            : "Nothing was added: "
                                    + (alreadyThere == 1 ? "the flight is" : "all " + alreadyThere + " flights are")
                                    + " there already.");
        } else {
            StringJoiner words = new StringJoiner(", ", lead, ".");
            words.add(counted(flights, "flights"));
            added.forEach((what, n) -> {
                if (n > 0) {
                    words.add(counted(n, what));
                }
            });
            lines.add(words.toString());
            if (alreadyThere > 0) {
                lines.add(
                        counted(alreadyThere, "flights") + (alreadyThere == 1 ? " was" : " were") + " there already.");
            }
        }
        lines.addAll(remarks);
        return lines;
    }

    private static String counted(int n, String plural) {
        String singular = plural.endsWith("batches") ? "batch" : plural.substring(0, plural.length() - 1);
        return Counted.of(n, singular);
    }
}
