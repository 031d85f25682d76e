#pragma once
// Values of one object of a hose lay's document.

#include "scupper/error.hpp"
#include "scupper/hydraulics/water.hpp"
#include "scupper/quantity.hpp"
#include "scupper/schema.hpp"
#include "values.hpp"

#include <initializer_list>
#include <optional>
#include <string>
#include <type_traits>

namespace scupper::json::detail {

/// The SI value of text with a unit; a bare number where the dimension has none.
double si_of(const Json& value, const Dimension& dimension, const std::string& path);
/// A head given as a length, or as the pressure of that head.
Length<> head_of(const Json& value, const hydraulics::Fluid<>& fluid, const std::string& path);
/// Water of a temperature, or an error that names the path.
hydraulics::Fluid<> water_or_error(const Temperature<>& temperature, const std::string& path);

/// The members of one object; every error names the path.
class Values {
  public:
    Values(const Json& object, std::string path) : object_(object), path_(std::move(path)) {}

    bool has(const char* key) const { return object_.contains(key); }
    /// Throws where the key is not there.
    void require(const char* key) const;
    /// Throws unless exactly one of the keys is there.
    void one_of(std::initializer_list<const char*> keys) const;
    /// Throws where a key stands that would not count.
    void only_for(bool counts, const char* key, const char* where) const;
    std::string text(const char* key, const std::string& otherwise) const {
        return text_or(object_, key, otherwise, path_);
    }
    /// Throws where the value is not above zero.
    double positive(const char* key, const Dimension& dimension, double otherwise = 0.0) const;

    void set(const char* key, double& target) const {
        if (has(key)) {
            target = si_of(object_[key], dim::none, path_ + "." + key);
        }
    }
    template <Dimension D>
    void set(const char* key, Quantity<D, double>& target) const {
        if (has(key)) {
            target = Quantity<D, double>(si_of(object_[key], D, path_ + "." + key));
        }
    }
    template <class Q>
    void set(const char* key, std::optional<Q>& target) const {
        if (has(key)) {
            set(key, target.emplace());
        }
    }
    /// The place of a word in its list as the value of an enumeration.
    template <class E, std::size_t N>
    E word(const char* key, const std::array<std::string_view, N>& words, E otherwise) const {
        const std::string found =
            text(key, std::string(words.at(static_cast<std::size_t>(otherwise))));
        const int index = index_of(words, found);
        if (index < 0) {
            unknown_word(key, found, words);
        }
        return static_cast<E>(index);
    }

  private:
    [[noreturn]] void unknown_word(const char* key, const std::string& found,
                                   std::span<const std::string_view> words) const;

    const Json& object_;
    std::string path_;
};

} // namespace scupper::json::detail
