package org.rafterbook.work;

import com.fasterxml.jackson.annotation.JsonAutoDetect;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import org.rafterbook.airframe.VersionDigest;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.review.Answer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Answers of one kind, each computed once: kept in the logbook by the digest of what it rests on and the edition of what
 * computes it.
 */
final class KeptAnswers<T> {

    private static final Logger LOG = LoggerFactory.getLogger(KeptAnswers.class);

    /** Made when it is first needed: the window opens before. */
    private static final class Json {
        /** Records by their components alone, maps in the order of their keys, so that equal inputs read the same. */
        static final JsonMapper MAPPER = JsonMapper.builder()
                .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
                .visibility(PropertyAccessor.GETTER, JsonAutoDetect.Visibility.NONE)
                .visibility(PropertyAccessor.IS_GETTER, JsonAutoDetect.Visibility.NONE)
                .visibility(PropertyAccessor.FIELD, JsonAutoDetect.Visibility.ANY)
                .addMixIn(Answer.class, KnownOrNot.class)
                .addModule(
                        new SimpleModule().addSerializer(new DateOut()).addDeserializer(LocalDate.class, new DateIn()))
                .build();
    }

    private final Logbook logbook;
    private final String kind;
    private final String edition;
    private final TypeReference<T> type;

    KeptAnswers(Logbook logbook, String kind, String edition, TypeReference<T> type) {
        this.logbook = logbook;
        this.kind = kind;
        this.edition = edition;
        this.type = type;
    }

    /**
     * The answer to an input, computed only where it is not kept yet.
     *
     * @param input records, lists and maps of them; no sets, whose order is nobody's
     */
    T of(Object input, Supplier<T> compute) {
        String digest = VersionDigest.sha256(write(input));
        return byDigest(digest).orElseGet(() -> {
            T answer = compute.get();
            logbook.keepComputed(kind, digest, edition, write(answer));
            return answer;
        });
    }

    /** The answer to an input where it is kept. */
    Optional<T> find(Object input) {
        return byDigest(VersionDigest.sha256(write(input)));
    }

    private Optional<T> byDigest(String digest) {
        return logbook.read(r -> Optional.ofNullable(r.computed(kind, digest, edition)))
                .flatMap(this::read);
    }

    private static String write(Object value) {
        try {
            return Json.MAPPER.writeValueAsString(value);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an answer that cannot be written", e);
        }
    }

    private Optional<T> read(String json) {
        try {
            return Optional.of(Json.MAPPER.readValue(json, type));
        } catch (JsonProcessingException e) {
            LOG.warn("An answer that was kept cannot be read; it is computed again.", e);
            return Optional.empty();
        }
    }

    /** Says of an answer which of the two it is. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "is")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = Answer.Known.class, name = "known"),
        @JsonSubTypes.Type(value = Answer.CannotTell.class, name = "cannot tell")
    })
    private interface KnownOrNot {}

    private static final class DateOut extends StdSerializer<LocalDate> {
        private static final long serialVersionUID = 1;

        private DateOut() {
            super(LocalDate.class);
        }

        @Override
        public void serialize(LocalDate date, JsonGenerator json, SerializerProvider provider) throws IOException {
            json.writeString(date.toString());
        }
    }

    private static final class DateIn extends StdDeserializer<LocalDate> {
        private static final long serialVersionUID = 1;

        private DateIn() {
            super(LocalDate.class);
        }

        @Override
        public LocalDate deserialize(JsonParser json, DeserializationContext context) throws IOException {
            return LocalDate.parse(json.getValueAsString());
        }
    }
}
