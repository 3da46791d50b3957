package org.rafterbook.ui.hall;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rafterbook.airframe.Model;
import org.rafterbook.flight.Venue;
import org.rafterbook.power.Motor;
import org.rafterbook.work.Evening;
import org.rafterbook.work.HallDesk;
import org.rafterbook.work.MotorLimit;
import org.rafterbook.work.Prepared;

/**
 * All the Hall shows, as read at one moment.
 *
 * @param limits where the motors are expected to break, keyed by motor
 * @param ratio gear of the winder used last, where winder turns were counted
 */
public record HallData(
        Evening evening,
        Prepared prepared,
        List<Model> models,
        List<Venue> venues,
        List<Motor> motors,
        Map<String, MotorLimit> limits,
        Optional<Double> ratio) {

    static HallData read(HallDesk desk) {
        return new HallData(
                desk.evening(),
                desk.prepare(),
                desk.book().riggings().models(),
                desk.visit().venues(),
                desk.winding().motors(),
                desk.winding().limits(),
                Optional.ofNullable(desk.winding().ratio()));
    }
}
