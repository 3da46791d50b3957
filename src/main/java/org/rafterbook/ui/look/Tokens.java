package org.rafterbook.ui.look;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.paint.Color;

/** The colours of one theme for drawing on a canvas, read once from the theme's own stylesheet. */
public final class Tokens {

    private static final Pattern DECLARATION = Pattern.compile("-rb-([a-z0-9-]+):\\s*(#[0-9A-Fa-f]{6})\\s*;");
    private static final Map<Theme, Tokens> READ = new EnumMap<>(Theme.class);

    private final Map<Token, Color> colours = new EnumMap<>(Token.class);

    private Tokens(Theme theme) {
        Matcher matcher = DECLARATION.matcher(text(theme));
        while (matcher.find()) {
            for (Token token : Token.values()) {
                if (token.css().equals(matcher.group(1))) {
                    colours.put(token, Color.web(matcher.group(2)));
                }
            }
        }
        if (colours.size() != Token.values().length) {
            throw new IllegalStateException(theme + " lacks a colour");
        }
    }

    static synchronized Tokens of(Theme theme) {
        return READ.computeIfAbsent(theme, Tokens::new);
    }

    /** The colour of the token. */
    public Color of(Token token) {
        return Objects.requireNonNull(colours.get(token));
    }

    private static String text(Theme theme) {
        try (InputStream in = URI.create(theme.stylesheet()).toURL().openStream()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
