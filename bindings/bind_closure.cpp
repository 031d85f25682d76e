// Closures: which kind, tapers, buffers, signs and devices over arrays, a first lay-out; in SI.
#include "docstrings.hpp"
#include "elementwise.hpp"
#include "scupper/closure.hpp"
#include "scupper/structure.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using closure::Element;
using closure::Plan;
using Elements = std::vector<Element>;

std::string_view kind_by_record(const Structure& s) {
    return closure::kind_name(closure::kind_by_record(
        {s.codes.lanes_on, s.codes.traffic_direction, s.codes.functional_class}));
}

NumberArray taper_length(const Array& speed, const Array& offset, const std::string& kind) {
    const closure::TaperKind which = closure::taper_kind_by_name(kind);
    return elementwise(
        [which](double v, double w) {
            return closure::taper_length(Speed<>(v), Length<>(w), which).si();
        },
        speed, offset);
}

NumberArray buffer_length(const Array& speed, const Array& downgrade) {
    return elementwise(
        [](double v, double g) { return closure::buffer_length(Speed<>(v), g).si(); }, speed,
        downgrade);
}

std::tuple<double, double, double> sign_spacing(const std::string& road,
                                                const std::string& edition) {
    const closure::SignSpacing s =
        closure::sign_spacing(closure::road_class_by_name(road), closure::edition_by_name(edition));
    return {s.a.si(), s.b.si(), s.c.si()};
}

NumberArray taper_device_spacing(const Array& speed, const std::string& kind) {
    const closure::TaperKind which = closure::taper_kind_by_name(kind);
    return elementwise(
        [which](double v) { return closure::taper_device_spacing(Speed<>(v), which).si(); }, speed);
}

NumberArray tangent_device_spacing(const Array& speed) {
    return elementwise([](double v) { return closure::tangent_device_spacing(Speed<>(v)).si(); },
                       speed);
}

NumberArray roll_ahead(const Array& speed) {
    return elementwise([](double v) { return closure::roll_ahead(Speed<>(v)).si(); }, speed);
}

NumberArray device_count(const Array& length, const Array& spacing) {
    return elementwise(
        [](double l, double s) { return number(closure::device_count(Length<>(l), Length<>(s))); },
        length, spacing);
}

NumberArray one_lane_cycle(const Array& length, const Array& speed, const Array& green) {
    return elementwise(
        [](double l, double v, double g) {
            return closure::one_lane_cycle(Length<>(l), Speed<>(v), Time<>(g)).si();
        },
        length, speed, green);
}

NumberArray one_lane_capacity(const Array& length, const Array& speed, const Array& green,
                              const Array& saturation) {
    return elementwise(
        [](double l, double v, double g, double s) {
            return closure::one_lane_capacity(Length<>(l), Speed<>(v), Time<>(g),
                                              closure::TrafficFlow<>(s))
                .si();
        },
        length, speed, green, saturation);
}

NumberArray hourly_demand(const Array& daily, const Array& hourly_share,
                          const Array& directional_share) {
    return elementwise(
        [](double n, double hour, double way) {
            return closure::hourly_demand(Count<>(n), hour, way).si();
        },
        daily, hourly_share, directional_share);
}

/// Place of the first hour, and how many.
std::pair<std::size_t, std::size_t> window(const std::vector<double>& demand, double capacity) {
    std::vector<closure::TrafficFlow<>> hours;
    for (const double vehicles : demand) {
        hours.emplace_back(vehicles);
    }
    const closure::Window found = closure::window(hours, closure::TrafficFlow<>(capacity));
    return {found.first, found.hours};
}

Plan plan(double speed, const std::string& kind, const std::string& road, double lane_width,
          double shoulder_width, double work_length, int lanes_closed, const std::string& edition,
          bool divided, double downgrade, int lanes, double set_back, bool at_curb) {
    const py::gil_scoped_release free;
    return closure::plan({.speed = Speed<>(speed),
                          .kind = closure::kind_by_name(kind),
                          .road = closure::road_class_by_name(road),
                          .lane_width = Length<>(lane_width),
                          .shoulder_width = Length<>(shoulder_width),
                          .work_length = Length<>(work_length),
                          .lanes_closed = lanes_closed,
                          .edition = closure::edition_by_name(edition),
                          .divided = divided,
                          .downgrade = downgrade,
                          .lanes = lanes,
                          .set_back = Length<>(set_back),
                          .at_curb = at_curb});
}

std::int64_t whole(const Count<>& count) {
    return static_cast<std::int64_t>(number(count));
}

Columns element_columns(const Elements& rows) {
    Columns columns;
    columns["name"] = texts(rows, [](const Element& e) { return e.name; });
    columns["start"] = numbers<double>(rows, [](const Element& e) { return e.start.si(); });
    columns["length"] = numbers<double>(rows, [](const Element& e) { return e.length.si(); });
    columns["devices"] =
        numbers<std::int64_t>(rows, [](const Element& e) { return whole(e.devices); });
    return columns;
}

Columns placing_columns(const std::vector<closure::Placing>& rows) {
    using closure::Placing;
    Columns columns;
    columns["what"] = texts(rows, [](const Placing& p) { return p.what; });
    columns["approach"] = texts(rows, [](const Placing& p) { return p.approach; });
    columns["station"] = numbers<double>(rows, [](const Placing& p) { return p.station.si(); });
    columns["length"] = numbers<double>(rows, [](const Placing& p) { return p.length.si(); });
    columns["pieces"] =
        numbers<std::int64_t>(rows, [](const Placing& p) { return whole(p.pieces); });
    return columns;
}

Columns place_columns(const Plan& plan) {
    using closure::Placed;
    const std::vector<Placed> rows = closure::places(plan);
    Columns columns;
    columns["what"] = texts(rows, [](const Placed& p) { return p.what; });
    columns["station"] = numbers<double>(rows, [](const Placed& p) { return p.station.si(); });
    columns["offset"] = numbers<double>(rows, [](const Placed& p) { return p.offset.si(); });
    return columns;
}

void bind_places(py::class_<Plan>& plan) {
    plan.def(
            "placing", [](const Plan& p) { return placing_columns(closure::placing_order(p)); },
            doc("closure::placing_order"))
        .def(
            "taking", [](const Plan& p) { return placing_columns(closure::taking_order(p)); },
            doc("closure::taking_order"))
        .def("places", &place_columns, doc("closure::places"))
        .def_property_readonly("lanes_shown", &closure::lanes_shown, doc("closure::lanes_shown"))
        .def_property_readonly(
            "lane_width", [](const Plan& p) { return p.site.lane_width.si(); },
            doc("closure::Site::lane_width"))
        .def_property_readonly(
            "shoulder_width", [](const Plan& p) { return p.site.shoulder_width.si(); },
            doc("closure::Site::shoulder_width"));
}

void bind_plan(py::module_& m) {
    py::class_<Plan> bound(m, "ClosurePlan", doc("closure::Plan"));
    bind_places(bound);
    bound
        .def_property_readonly(
            "kind", [](const Plan& p) { return closure::kind_name(p.kind); },
            doc("closure::Plan::kind"))
        .def_property_readonly(
            "taper", [](const Plan& p) { return p.taper.si(); }, doc("closure::Plan::taper"))
        .def_property_readonly(
            "buffer", [](const Plan& p) { return p.buffer.si(); }, doc("closure::Plan::buffer"))
        .def(
            "elements", [](const Plan& p) { return element_columns(p.elements); },
            doc("closure::Plan::elements"))
        .def(
            "removal_order",
            [](const Plan& p) { return element_columns(closure::removal_order(p)); },
            doc("closure::removal_order"))
        .def_property_readonly(
            "length", [](const Plan& p) { return p.length.si(); }, doc("closure::Plan::length"))
        .def_property_readonly(
            "opposite_approach", [](const Plan& p) { return p.opposite_approach.si(); },
            doc("closure::Plan::opposite_approach"))
        .def_property_readonly(
            "devices", [](const Plan& p) { return whole(p.devices); },
            doc("closure::Plan::devices"))
        .def_readonly("advance_signs", &Plan::advance_signs, doc("closure::Plan::advance_signs"))
        .def_readonly("arrow_boards", &Plan::arrow_boards, doc("closure::Plan::arrow_boards"))
        .def_readonly("shadow_vehicles", &Plan::shadow_vehicles,
                      doc("closure::Plan::shadow_vehicles"))
        .def_readonly("flaggers", &Plan::flaggers, doc("closure::Plan::flaggers"))
        .def_readonly("cautions", &Plan::cautions, doc("closure::Plan::cautions"));
}

} // namespace

void bind_closure(py::module_& m) {
    using py::arg;
    m.def("kind_by_record", &kind_by_record, doc("closure::kind_by_record"), arg("structure"));
    m.def("taper_length", &taper_length, doc("closure::taper_length"), arg("speed"), arg("offset"),
          arg("kind"));
    m.def("buffer_length", &buffer_length, doc("closure::buffer_length"), arg("speed"),
          arg("downgrade"));
    m.def("sign_spacing", &sign_spacing, doc("closure::sign_spacing"), arg("road"), arg("edition"));
    m.def("taper_device_spacing", &taper_device_spacing, doc("closure::taper_device_spacing"),
          arg("speed"), arg("kind"));
    m.def("tangent_device_spacing", &tangent_device_spacing, doc("closure::tangent_device_spacing"),
          arg("speed"));
    m.def("device_count", &device_count, doc("closure::device_count"), arg("length"),
          arg("spacing"));
    m.def("one_lane_cycle", &one_lane_cycle, doc("closure::one_lane_cycle"), arg("length"),
          arg("speed"), arg("green"));
    m.def("one_lane_capacity", &one_lane_capacity, doc("closure::one_lane_capacity"), arg("length"),
          arg("speed"), arg("green"), arg("saturation"));
    m.def("hourly_demand", &hourly_demand, doc("closure::hourly_demand"), arg("daily"),
          arg("hourly_share"), arg("directional_share"));
    m.def("closure_window", &window, doc("closure::window"), arg("demand"), arg("capacity"));
    bind_plan(m);
    m.def("closure_plan", &plan, doc("closure::plan"), arg("speed"), arg("kind"), arg("road"),
          arg("lane_width"), arg("shoulder_width"), arg("work_length"), arg("lanes_closed"),
          arg("edition"), arg("divided"), arg("downgrade"), arg("lanes"), arg("set_back"),
          arg("at_curb"));
    m.def(
        "advance_warning_may_be_omitted",
        [](double set_back, bool at_curb) {
            return closure::advance_warning_may_be_omitted(Length<>(set_back), at_curb);
        },
        doc("closure::advance_warning_may_be_omitted"), arg("set_back"), arg("at_curb"));
    m.def("roll_ahead", &roll_ahead, doc("closure::roll_ahead"), arg("speed"));
}

} // namespace scupper::python
