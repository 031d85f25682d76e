#pragma once
// Distributions of uncertain inputs and the keyed draws from them. Every draw follows from its key
// alone: neither the order of the calls nor the number of threads can change it.

#include "scupper/random/correlation.hpp"
#include "scupper/random/discrete.hpp"
#include "scupper/random/empirical.hpp"
#include "scupper/random/fast_quantile.hpp"
#include "scupper/random/hash.hpp"
#include "scupper/random/key.hpp"
#include "scupper/random/listed.hpp"
#include "scupper/random/permutation.hpp"
#include "scupper/random/philox.hpp"
#include "scupper/random/quantile_table.hpp"
#include "scupper/random/sampling.hpp"
#include "scupper/random/sobol.hpp"
#include "scupper/random/special.hpp"
#include "scupper/random/three_point.hpp"
