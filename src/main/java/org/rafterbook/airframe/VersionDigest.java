package org.rafterbook.airframe;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Digest of what makes a version: model, build, settings, and the geometry that no setting sets. */
public final class VersionDigest {

    private VersionDigest() {}

    /**
     * @param values settings keyed by setting id
     * @param geometry null where the model has none; its measured balance and its motor do not count
     */
    public static String of(
            String modelId,
            int build,
            List<SettingDef> settings,
            Map<String, Setting> values,
            @Nullable Airframe geometry) {
        StringBuilder text = new StringBuilder(modelId).append('|').append(build);
        new TreeMap<>(values)
                .forEach((id, value) -> text.append('|').append(id).append('=').append(value.canonical()));
        if (geometry != null) {
            text.append('|').append(residual(settings, geometry));
        }
        return sha256(text.toString());
    }

    /** The geometry with every tied setting at zero, as text: equal wherever only settings differ. */
    private static String residual(List<SettingDef> settings, Airframe geometry) {
        Airframe rest = new Airframe(geometry.surfaces(), geometry.masses(), null, null);
        for (SettingDef def : settings) {
            SheetPath path = def.path() == null ? null : SheetPath.parse(def.path());
            if (path != null && path.isIn(rest)) {
                rest = path.set(rest, 0);
            }
        }
        return rounded(rest.toString());
    }

    /** Numbers to nine decimals: moving a surface there and back leaves arithmetic noise in the masses it carries. */
    private static String rounded(String text) {
        Matcher numbers = Pattern.compile("-?\\d+\\.\\d+(E-?\\d+)?").matcher(text);
        return numbers.replaceAll(m -> {
            String number = new BigDecimal(m.group())
                    .setScale(9, RoundingMode.HALF_EVEN)
                    .stripTrailingZeros()
                    .toPlainString();
            return number.equals("-0") ? "0" : number;
        });
    }

    /** The SHA-256 of a text, 64 hexadecimal digits. */
    public static String sha256(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
