#pragma once
// With the agency's own people, or by contract.
