module example.com/clothyard

go 1.26.0

require (
	github.com/google/go-cmp v0.7.0
	github.com/shopspring/decimal v1.6.0
	golang.org/x/exp v0.0.0-20261113113407-e3970619a1a4
)
