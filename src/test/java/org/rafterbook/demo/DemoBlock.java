package org.rafterbook.demo;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** Some flights of one model in a row, and what is set before them. */
record DemoBlock(DemoModel model, Map<String, String> settings, int flights, double fraction) {

    /** Reads {@code model [setting=value ...] xN [half]}. */
    static DemoBlock parse(String text) {
        Map<String, String> settings = new LinkedHashMap<>();
        int flights = 0;
        double fraction = 1;
        String[] words = text.split(" ", -1);
        for (String word : words) {
            int equals = word.indexOf('=');
            if (equals > 0) {
                String name = word.substring(0, equals);
                settings.put(name.indexOf('.') < 0 ? name.replace('_', ' ') : name, word.substring(equals + 1));
            } else if (word.startsWith("x")) {
                flights = Integer.parseInt(word.substring(1));
            } else if (word.equals("half")) {
                fraction = 0.5;
            }
        }
        return new DemoBlock(DemoModel.valueOf(words[0].toUpperCase(Locale.ROOT)), settings, flights, fraction);
    }
}
