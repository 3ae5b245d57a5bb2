BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Import-LayerLedger' {
    BeforeEach {
        $folder = (New-Item -ItemType Directory -Path (Join-Path $TestDrive ([guid]::NewGuid()))).FullName
        $path = Copy-Fixture groups-nested (Join-Path $folder 'hero.psd')
        $file = Get-LayerFile $path
    }

    It 'brings marks back on parts that did not change, and Save-LayerFile writes them' {
        $file | Set-Layer -LayerNumber 7 -Mark Green | Set-Layer -Name Body -Mark Yellow | Export-LayerLedger > $null
        $without = Get-LayerFile $path | Rename-Layer -Name Body -NewName torso
        $without | Get-Layer -Mark Green, Yellow | Should -BeNullOrEmpty
        $out = $without | Import-LayerLedger
        [object]::ReferenceEquals($out, $without) | Should -BeTrue
        $out.PendingCount | Should -Be 3
        $out | Save-LayerFile -InPlace > $null
        Get-Layer $path -Mark Green, Yellow | ForEach-Object { "$($_.Name) $($_.Mark)" } | Should -Be 'Head Green', 'torso Yellow'
    }

    It 'takes layers, and filters' {
        $file | Set-LayerStatus Done > $null
        ($file | Get-Layer -Name Body | Import-LayerLedger).Mark | Should -Be 'Green'
        ($file | Import-LayerLedger -Side Left | Get-Layer -Mark Green -Leaf).Name | Should -Be 'Arm L', 'Eye L', 'Body'
    }

    It 'joins the ledgers of several people, whatever their order, and says where they differ' {
        $anna = Join-Path $folder 'anna.layerledger.json'
        $ben = Join-Path $folder 'ben.layerledger.json'
        $file | Set-LayerStatus Recheck 'hem' -Name Body -Who anna -LedgerPath $anna > $null
        Start-Sleep -Milliseconds 1100
        $file | Set-LayerStatus Done -Name Body -Who ben -LedgerPath $ben > $null
        foreach ($order in @($anna, $ben), @($ben, $anna)) {
            $fresh = Get-LayerFile $path
            $result = Get-Streams { $fresh | Import-LayerLedger $order }
            ($fresh | Get-Layer -Name Body).Mark | Should -Be 'Green'
            "$($result.Warnings)" | Should -BeLike "*Figure/Body' is done by ben*it was recheck by anna*"
            $clash = $fresh | Import-LayerLedger $order -ListClashes
            "$($clash.LayerPath) $($clash.State) $($clash.Who) $($clash.OtherState) $($clash.OtherWho) $($clash.OtherNote)" | Should -Be 'Figure/Body Done ben Recheck anna hem'
            $clash | Out-String -Width 160 | Should -Match 'Figure/Body\s+done\s+ben'
        }
    }

    It 'changes nothing with -WhatIf and passes its input on' {
        $file | Set-LayerStatus Done > $null
        ($file | Import-LayerLedger -WhatIf).PendingCount | Should -Be 0
    }

    It 'refuses a file without a ledger, and goes on' {
        $other = Get-LayerFile (Copy-Fixture groups-nested (Join-Path $folder 'other.psd'))
        $file | Export-LayerLedger > $null
        $result = Get-Streams { $other, $file | Import-LayerLedger }
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'LedgerNotFound*'
        $result.Output.Name | Should -Be 'hero.psd'
        { $file | Import-LayerLedger (Join-Path $folder 'none.json') -ErrorAction Stop } | Should -Throw '*no such file*'
    }
}
