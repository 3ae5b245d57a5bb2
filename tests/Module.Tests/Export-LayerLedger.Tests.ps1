BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Export-LayerLedger' {
    BeforeEach {
        $folder = (New-Item -ItemType Directory -Path (Join-Path $TestDrive ([guid]::NewGuid()))).FullName
        $file = Get-LayerFile (Copy-Fixture groups-nested (Join-Path $folder 'hero.psd'))
        $ledger = Join-Path $folder 'hero.layerledger.json'
    }

    It 'writes a ledger that follows its schema beside the file' {
        $out = $file | Set-Layer -Name Body -Mark Green | Export-LayerLedger -Who anna
        $out.FullName | Should -Be $ledger
        $module = (Get-Module LayerTools).ModuleBase
        Get-Content -LiteralPath $ledger -Raw | Test-Json -SchemaFile (Join-Path $module 'layerledger.schema.json') | Should -BeTrue
        $body = (Get-Content -LiteralPath $ledger -Raw | ConvertFrom-Json).parts | Where-Object path -EQ 'Figure/Body'
        "$($body.state) $($body.mark) $($body.who)" | Should -Be 'done green anna'
    }

    It 'writes the same bytes for the same state, and leaves the file alone then' {
        $file | Set-Layer -Name Body -Mark Green | Export-LayerLedger -Who anna > $null
        $before = Get-FileHash -LiteralPath $ledger
        $time = (Get-Item -LiteralPath $ledger).LastWriteTimeUtc
        ($file | Export-LayerLedger -Who ben).FullName | Should -Be $ledger
        (Get-FileHash -LiteralPath $ledger).Hash | Should -Be $before.Hash
        (Get-Item -LiteralPath $ledger).LastWriteTimeUtc | Should -Be $time
    }

    It 'keeps states and notes, and those of other ledgers' {
        $file | Set-LayerStatus Done 'hem is right' -Name Body -Who anna > $null
        $other = Join-Path $folder 'ben'
        $file | Set-LayerStatus Recheck 'jaw' -LiteralLayerPath Figure/Head/Head -Who ben -LedgerPath $other > $null
        $file | Rename-Layer -Name Body -NewName torso | Export-LayerLedger -LedgerPath $other > $null
        $parts = (Get-Content -LiteralPath $ledger -Raw | ConvertFrom-Json).parts
        $parts | Where-Object note | ForEach-Object { "$($_.path) $($_.state) $($_.note) $($_.who)" } | Should -Be 'Figure/Head/Head recheck jaw ben', 'Figure/torso done hem is right anna'
    }

    It 'keeps parts that vanished until they are removed' {
        $file | Export-LayerLedger > $null
        $file | Remove-Layer -Name Body | Export-LayerLedger > $null
        Get-Content -LiteralPath $ledger -Raw | Should -BeLike '*Figure/Body*'
        $file | Export-LayerLedger -RemoveMissing > $null
        Get-Content -LiteralPath $ledger -Raw | Should -Not -BeLike '*Figure/Body*'
    }

    It 'writes where it is told to, each file its own' {
        $copy = Get-LayerFile (Copy-Fixture groups-nested (Join-Path $folder 'other.psd'))
        ($file, $copy | Export-LayerLedger -Destination (Join-Path $folder ledgers)).Name | Should -Be 'hero.layerledger.json', 'other.layerledger.json'
        $result = Get-Streams { $file, $copy | Export-LayerLedger -Destination (Join-Path $folder 'one.layerledger.json') }
        $result.Output.Count | Should -Be 1
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'DestinationTaken*'
    }

    It 'never writes over a layered file, or anything else that is no ledger' {
        $hash = (Get-FileHash -LiteralPath $file.Path).Hash
        $result = Get-Streams { $file | Export-LayerLedger -Destination $file.Path }
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'NotALedger*'
        (Get-FileHash -LiteralPath $file.Path).Hash | Should -Be $hash
        $settings = Join-Path $folder 'settings.json'
        Set-Content -LiteralPath $settings -Value '{ "theme": "dark" }'
        (Get-Streams { $file | Set-LayerStatus Done -LedgerPath $settings }).Errors[0].FullyQualifiedErrorId | Should -BeLike 'BadLedger*'
        Get-Content -LiteralPath $settings | Should -Be '{ "theme": "dark" }'
    }

    It 'writes nothing with -WhatIf' {
        $file | Export-LayerLedger -WhatIf | Should -BeNullOrEmpty
        $ledger | Should -Not -Exist
    }

    It 'leaves a ledger alone that it cannot read, and says where it is wrong' {
        Set-Content -LiteralPath $ledger -Value "{`n  `"file`": `"hero.psd`",`n  `"parts`": 7`n}" -NoNewline
        $before = Get-Content -LiteralPath $ledger -Raw
        $result = Get-Streams { $file | Export-LayerLedger }
        "$($result.Errors[0])" | Should -Match '\$(\.parts)?, line \d+, column \d+'
        $result.Errors[0].CategoryInfo.Category | Should -Be 'InvalidData'
        Get-Content -LiteralPath $ledger -Raw | Should -Be $before
    }
}
