package org.rafterbook.work;

import org.rafterbook.review.Ceiling;

/**
 * The chance to touch something by launch torque.
 *
 * @param limit what is in the way
 */
public record TouchRisk(HeightMark limit, Ceiling ceiling) {}
