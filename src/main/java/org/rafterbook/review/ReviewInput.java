package org.rafterbook.review;

import java.util.List;
import java.util.stream.Stream;

/**
 * Everything the review of one model rests on.
 *
 * @param model the model's name
 * @param flights its flights in flying order, left-out ones included
 * @param settings its settings in the order they are listed
 * @param steps the trim changes in the order they were made
 * @param fullMotorsOnly true where flights on partial motors are set aside
 */
public record ReviewInput(
        String model,
        List<ReviewFlight> flights,
        List<SettingInfo> settings,
        List<TrimStep> steps,
        boolean fullMotorsOnly) {

    public ReviewInput {
        flights = List.copyOf(flights);
        settings = List.copyOf(settings);
        steps = List.copyOf(steps);
    }

    /** Input whose trim changes are those between the flights as flown; every rigging made was flown. */
    public static ReviewInput of(String model, List<ReviewFlight> flights, List<SettingInfo> settings) {
        return new ReviewInput(
                model,
                flights,
                settings,
                TrimStep.between(flights.stream().map(ReviewFlight::settings).toList()),
                false);
    }

    /** The flights whose time enters the estimates, exactly or as a lower bound. */
    List<ReviewFlight> counted() {
        return flights.stream()
                .filter(f -> f.counts()
                        && f.fullDurationS() > 0
                        && !(fullMotorsOnly && f.motor().isPartial()))
                .toList();
    }

    /** Keys of all settings: the listed ones in their order, then any other a flight carries. */
    List<String> settingKeys() {
        return Stream.concat(
                        settings.stream().map(SettingInfo::key),
                        flights.stream().flatMap(f -> f.settings().keySet().stream()))
                .distinct()
                .toList();
    }

    /** What is known of a setting. */
    SettingInfo setting(String key) {
        return settings.stream()
                .filter(info -> info.key().equals(key))
                .findFirst()
                .orElseGet(() -> SettingInfo.named(key));
    }
}
