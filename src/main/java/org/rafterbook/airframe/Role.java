package org.rafterbook.airframe;

/** What a surface is for; several surfaces of a model may be wings. */
public enum Role {
    WING,
    TAILPLANE,
    FIN
}
